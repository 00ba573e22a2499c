namespace Explain;

/// <summary>A line of algebra: an equation and the move that led to it. Lines are produced, not stored truths.</summary>
/// <param name="Says">The equation.</param>
/// <param name="By">The move from the line before.</param>
public sealed record EquationLine(Equation Says, Move By);
