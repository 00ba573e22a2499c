namespace Explain;

/// <summary>What has come of the claims so far, and which claims give which quantities.</summary>
internal sealed class Track(Arrangement arrangement)
{
    private readonly List<Outcome> values = [];
    private readonly List<Broken> broken = [];
    private readonly HashSet<ClaimId> lost = [];
    private readonly Dictionary<ClaimId, Symbol> given = [];
    private Dictionary<Symbol, ClaimId> known = [];

    public Items<Outcome> Values => [.. values];

    public Items<Broken> Broken => [.. broken];

    public bool IsLost(ClaimId claim) => lost.Contains(claim);

    /// <summary>Takes a step out of the argument, with all that stands inside it.</summary>
    public void Lose(Step step)
    {
        foreach (Step inside in Solution.Within(step))
        {
            lost.Add(inside.Id);
            if (inside is Calculation calculation) Gives(inside.Id, calculation.Target);
        }
    }

    public void Break(ClaimId claim, Break why)
    {
        lost.Add(claim);
        broken.Add(new(claim, why));
    }

    public void Value(ClaimId claim, Value value) => values.Add(new(claim, value));

    /// <summary>Records that a claim gives a quantity; the first one that does is the one that is meant later.</summary>
    public void Gives(ClaimId claim, Symbol of)
    {
        given[claim] = arrangement.Canonical(of);
        known.TryAdd(arrangement.Canonical(of), claim);
    }

    /// <summary>The one of some claims that gives a quantity; null when none does.</summary>
    public ClaimId? OneOf(Items<ClaimId> claims, Symbol symbol)
    {
        foreach (ClaimId claim in claims)
            if (given.TryGetValue(claim, out Symbol? of) && of == arrangement.Canonical(symbol)) return claim;
        return null;
    }

    /// <summary>The claim that gives a quantity, one of those named before any other; null when none does.</summary>
    public ClaimId? Giving(Symbol symbol, Items<ClaimId> first) =>
        OneOf(first, symbol) ?? (known.TryGetValue(arrangement.Canonical(symbol), out ClaimId other) ? other : null);

    /// <summary>The formula with each quantity that some claim gives as that claim.</summary>
    public Expr Resolved(Expr expr, Items<ClaimId> first) =>
        expr.Substitute(e => e is SymbolUse use && Giving(use.Symbol, first) is { } claim ? new ValueOf(claim) : null);

    /// <summary>The claims that give quantities as they are here; what a case learns ends with it.</summary>
    public void Apart(Action steps)
    {
        Dictionary<Symbol, ClaimId> outside = known;
        known = new(outside);
        steps();
        known = outside;
    }
}
