namespace Explain;

/// <summary>Two formulas that are equal.</summary>
/// <param name="Left">The left side.</param>
/// <param name="Right">The right side.</param>
public sealed record Equation(Expr Left, Expr Right);
