namespace Explain;

/// <summary>The negative of a formula.</summary>
/// <param name="Of">What is made negative.</param>
public sealed record Negative(Expr Of) : Expr;
