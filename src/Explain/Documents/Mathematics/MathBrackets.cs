namespace Explain;

/// <summary>A piece in brackets.</summary>
internal sealed record MathBrackets(MathPiece Of) : MathPiece;
