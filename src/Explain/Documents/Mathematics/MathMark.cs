namespace Explain;

/// <summary>A sign that belongs to what follows, in Unicode: ∠, m∠, a minus, π.</summary>
internal sealed record MathMark(string Sign) : MathPiece;
