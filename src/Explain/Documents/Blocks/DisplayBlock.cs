namespace Explain;

/// <summary>Formulas on lines of their own.</summary>
internal sealed record DisplayBlock(Items<MathPiece> Lines) : Block;
