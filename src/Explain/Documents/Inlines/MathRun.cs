namespace Explain;

/// <summary>A name, a value or a formula in running text.</summary>
internal sealed record MathRun(MathPiece Is) : Inline;
