namespace Explain;

/// <summary>A symbol where it stands in a formula.</summary>
/// <param name="Symbol">The symbol.</param>
public sealed record SymbolUse(Symbol Symbol) : Expr;
