namespace Explain.Generators;

/// <summary>What must hold.</summary>
internal sealed record RequireLine(EquatableArray<ConditionModel> Holds, ReasonModel? Reason) : LineModel(Reason)
{
    public override IEnumerable<LetterNode> Uses => Holds.SelectMany(c => c.Letters);
}
