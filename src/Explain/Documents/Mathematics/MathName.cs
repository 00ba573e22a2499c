namespace Explain;

/// <summary>Letters that name a point, a line, a shape or an unknown: PQ, B₁, x.</summary>
internal sealed record MathName(string Letters) : MathPiece;
