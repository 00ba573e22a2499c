namespace Explain;

/// <summary>A fraction; in one line a division.</summary>
internal sealed record MathFraction(MathPiece Top, MathPiece Bottom) : MathPiece
{
    public override MathLevel Level => MathLevel.Product;
}
