namespace Explain;

/// <summary>A trigonometric function, or an inverse, of a formula. Angles are in degrees.</summary>
/// <param name="Function">Which function.</param>
/// <param name="To">What it is taken of.</param>
public sealed record Apply(Function Function, Expr To) : Expr;
