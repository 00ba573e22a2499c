namespace Explain;

/// <summary>A piece of mathematics as it is laid out, in no output's notation yet.</summary>
internal abstract record MathPiece
{
    public virtual MathLevel Level => MathLevel.Atom;
}
