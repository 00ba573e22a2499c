namespace Explain;

/// <summary>What each place of a page may show, collected once for each set of steps.</summary>
internal sealed class EvidenceBook
{
    private readonly Func<Items<ClaimId>, Evidence> gather;
    private readonly Dictionary<Items<ClaimId>, Evidence> known = [];

    /// <summary>Of a page of a solution.</summary>
    public EvidenceBook(Page page)
    {
        RuleIds = [.. RuleBook.Standard.Rules.Select(r => r.Id.Name), .. page.Solution.Steps.Select(s => s.Why.Rule.Name)];
        gather = of =>
        {
            Evidence evidence = new(page.Claims, WorkingUnit.Of(page.Solution.Of)) { IsExact = page.Speaker.Style.Exact };
            SolutionGathering gathering = new(page.Solution, page.Claims, evidence);
            if (of.Count == 0) gathering.TakePage();
            foreach (ClaimId id in of) gathering.TakeStep(id);
            return evidence;
        };
    }

    /// <summary>Of the question of a problem.</summary>
    public EvidenceBook(Problem problem)
    {
        RuleIds = [.. RuleBook.Standard.Rules.Select(r => r.Id.Name)];
        gather = _ =>
        {
            Evidence evidence = new(NoClaims.All, null);
            new ProblemGathering(problem, NoClaims.All, evidence).Take();
            return evidence;
        };
    }

    /// <summary>Ids whose wordings are reasons.</summary>
    public HashSet<string> RuleIds { get; }

    /// <summary>What a place may show that prints these steps; of a place that prints none, what stands outside the steps.</summary>
    public Evidence For(Items<ClaimId> steps) => known.TryGetValue(steps, out Evidence? found) ? found : known[steps] = gather(steps);
}
