namespace Explain;

/// <summary>There is no value: a root of a negative number, a sine greater than 1, a divisor 0, a tangent of 90°.</summary>
/// <param name="Part">The part that has none, without units: its numbers are those that the formula works with.</param>
internal sealed record OutsideDomain(Expr Part) : Evaluation;
