namespace Explain;

/// <summary>Where a symbol gets its value.</summary>
/// <param name="Of">The symbol.</param>
/// <param name="Is">What stands for it.</param>
public sealed record Binding(Symbol Of, Expr Is);
