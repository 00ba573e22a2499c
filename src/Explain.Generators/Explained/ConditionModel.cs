namespace Explain.Generators;

/// <summary>A comparison.</summary>
internal sealed record ConditionModel(Node Left, string Relation, Node Right)
{
    public IEnumerable<LetterNode> Letters => Left.Letters.Concat(Right.Letters);
}
