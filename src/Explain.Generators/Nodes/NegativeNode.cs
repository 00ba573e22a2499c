namespace Explain.Generators;

/// <summary>The negative of a formula.</summary>
internal sealed record NegativeNode(Node Of) : Node
{
    public override UnitModel? Unit => Of.Unit;

    public override IEnumerable<LetterNode> Letters => Of.Letters;

    public override Node? InDegrees() => Of.InDegrees() is { } of ? new NegativeNode(of) : null;
}
