namespace Explain;

/// <summary>A measurement given: a quantity and its value.</summary>
/// <param name="Of">The quantity, its letters in the order typed.</param>
/// <param name="Value">Its value: a number with a unit, or an expression in letters.</param>
/// <param name="Within">By how much it may be wrong either way; null when taken as exact or when only <c>accuracy</c> says.</param>
/// <param name="Typed">The value as typed, without the ±.</param>
/// <param name="At">Where it stands.</param>
public sealed record Given(Symbol Of, Expr Value, Expr? Within, string Typed, Position At);
