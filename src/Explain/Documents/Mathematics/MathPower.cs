namespace Explain;

/// <summary>A power with a whole exponent.</summary>
internal sealed record MathPower(MathPiece Base, int Exponent) : MathPiece;
