namespace Explain;

/// <summary>Changes that a solution can take, by claim.</summary>
internal sealed class Changed
{
    private readonly Dictionary<ClaimId, Change> changes = [];

    /// <exception cref="ArgumentException">A change does not fit the solution.</exception>
    public Changed(Solution solution, Items<Change> changes)
    {
        Dictionary<ClaimId, Claimed> claims = solution.Premises.Concat<Claimed>(solution.Steps).ToDictionary(c => c.Id);
        foreach (Change change in changes)
            if (!claims.TryGetValue(change.Claim, out Claimed? claim) || !Fits(change, claim) || !this.changes.TryAdd(change.Claim, change))
                throw new ArgumentException(change.Claim.Name, nameof(changes));
    }

    /// <summary>Whether every step is still worked out by its own rule.</summary>
    public bool AreOfGivens => changes.Values.All(c => c is GivenIs or GivenWithin);

    public Change? Of(ClaimId claim) => changes.GetValueOrDefault(claim);

    private static bool Fits(Change change, Claimed claim) => (change, claim) switch
    {
        (GivenIs { Value: Quantity { Unit.Power: 0 } }, Premise { Source: Source.Given, Says: HowMany }) => true,
        (GivenIs given, Premise { Source: Source.Given } premise) => Stated.By(premise) is { Is: var old } && SameKind(given.Value, old),
        (GivenWithin given, Premise { Source: Source.Given } premise) => Stated.By(premise) is { Is: var old } && SameKind(given.From, old) && SameKind(given.To, old)
            && Terrain.Range(premise.Id, given.From, given.To) is not null,
        (ValueIs { Value: { Exact: not null, Unit: var unit } }, Calculation c) => unit.SameKind(c.Value.Unit),
        (ValueIs { Value.Exact: not null }, Algebra) => true,
        (FormulaIs, Calculation) => true,
        _ => false,
    };

    private static bool SameKind(Expr value, Expr old) => ScaleOf(value).SameKind(ScaleOf(old));

    private static Scale ScaleOf(Expr expr) => new PlainForm(new Interner(), _ => Unit.None).Of(expr).Scale;
}
