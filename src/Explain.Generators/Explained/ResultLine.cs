namespace Explain.Generators;

/// <summary>The result.</summary>
internal sealed record ResultLine(LetterNode Symbol, Node Is, ReasonModel? Reason) : LineModel(Reason)
{
    public override IEnumerable<LetterNode> Uses => Is.Letters;
}
