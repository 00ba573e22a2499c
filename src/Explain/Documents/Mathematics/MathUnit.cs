namespace Explain;

/// <summary>A unit behind a number: m, cm², °.</summary>
internal sealed record MathUnit(Unit Is) : MathPiece;
