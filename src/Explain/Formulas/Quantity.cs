namespace Explain;

/// <summary>A number with its unit: digits of a rule itself (180°, 2), or inside a given.</summary>
/// <param name="Amount">The exact number.</param>
/// <param name="Unit">Its unit; none for a plain number.</param>
public sealed record Quantity(Exact Amount, Unit Unit) : Expr;
