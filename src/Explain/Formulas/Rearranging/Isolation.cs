namespace Explain;

/// <summary>An equation rearranged for one quantity.</summary>
/// <param name="Formula">What the quantity is equal to.</param>
/// <param name="Lines">The equations from the first to the last, each with the move that led to it.</param>
/// <param name="Second">Whether there is a second value.</param>
/// <param name="Other">The formula of the second value; null where there is none.</param>
internal sealed record Isolation(Expr Formula, Items<EquationLine> Lines, SecondValue Second, Expr? Other);
