namespace Explain.Generators;

/// <summary>A square root.</summary>
internal sealed record RootNode(Node Of) : Node
{
    public override UnitModel? Unit => Of.Unit?.Root;

    public override IEnumerable<LetterNode> Letters => Of.Letters;
}
