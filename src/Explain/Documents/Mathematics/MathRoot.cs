namespace Explain;

/// <summary>A square root.</summary>
internal sealed record MathRoot(MathPiece Of) : MathPiece;
