namespace Explain.Generators;

/// <summary>A symbol.</summary>
/// <param name="Name">As it is printed.</param>
/// <param name="Of">Its unit, where known.</param>
internal sealed record LetterNode(string Name, UnitModel? Of) : Node
{
    public override UnitModel? Unit => Of;

    public override IEnumerable<LetterNode> Letters => [this];
}
