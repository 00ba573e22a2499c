namespace Explain.Generators;

/// <summary>Two ways to go on.</summary>
internal sealed record BranchLine(EquatableArray<ConditionModel> If, EquatableArray<LineModel> Then, EquatableArray<LineModel> Otherwise, ReasonModel? Reason) : LineModel(Reason)
{
    public override IEnumerable<LetterNode> Uses => If.SelectMany(c => c.Letters);

    public override IEnumerable<LineModel> All => Then.Concat(Otherwise).SelectMany(l => l.All).Prepend(this);
}
