namespace Explain.Generators;

/// <summary>A value found by another explained method.</summary>
internal sealed record CallLine(LetterNode Symbol, string Formula, EquatableArray<Node> Arguments, ReasonModel? Reason) : LineModel(Reason)
{
    public override string Gives => Symbol.Name;

    public override IEnumerable<LetterNode> Uses => Arguments.SelectMany(a => a.Letters);
}
