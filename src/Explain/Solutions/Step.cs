namespace Explain;

/// <summary>A claim that follows from earlier ones by a rule.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Says">What is claimed.</param>
/// <param name="Why">The rule and what it rests on.</param>
public abstract record Step(ClaimId Id, Statement Says, RuleUse Why) : Claimed(Id, Says)
{
    /// <summary>What the step does, as a heading; null where the document words it from what is found.</summary>
    public Phrase? Title { get; init; }

    /// <summary>Remarks on the step.</summary>
    public Items<Remark> Remarks { get; init; }
}
