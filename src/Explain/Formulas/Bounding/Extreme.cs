namespace Explain;

/// <summary>A least or greatest value over a box.</summary>
/// <param name="Value">The value, in the units of the formula.</param>
/// <param name="At">The place; where there are several, one of them.</param>
/// <param name="Closed">The formula with the exact measurements of that place; null when these are only enclosed.</param>
internal sealed record Extreme(Value Value, Items<Located> At, Expr? Closed);
