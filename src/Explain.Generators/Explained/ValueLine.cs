namespace Explain.Generators;

/// <summary>A local value.</summary>
internal sealed record ValueLine(LetterNode Symbol, Node Is, ReasonModel? Reason) : LineModel(Reason)
{
    public override string Gives => Symbol.Name;

    public override IEnumerable<LetterNode> Uses => Is.Letters;
}
