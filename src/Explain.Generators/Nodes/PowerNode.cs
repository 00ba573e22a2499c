namespace Explain.Generators;

/// <summary>A power with a whole exponent, 2 or more.</summary>
internal sealed record PowerNode(Node Base, int Exponent) : Node
{
    public override UnitModel? Unit => Base.Unit?.To(Exponent);

    public override IEnumerable<LetterNode> Letters => Base.Letters;
}
