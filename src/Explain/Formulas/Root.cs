namespace Explain;

/// <summary>The square root that is not negative.</summary>
/// <param name="Of">What is under the root.</param>
public sealed record Root(Expr Of) : Expr;
