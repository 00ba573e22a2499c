namespace Explain;

/// <summary>A sign between two pieces, in Unicode: =, ≈, +, −, ×.</summary>
internal sealed record MathSign(string Sign) : MathPiece;
