namespace Explain;

/// <summary>Pieces side by side.</summary>
internal sealed record MathRow(Items<MathPiece> Of, MathLevel Held) : MathPiece
{
    public override MathLevel Level => Held;
}
