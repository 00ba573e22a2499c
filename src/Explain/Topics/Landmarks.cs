namespace Explain;

/// <summary>
/// Goals behind bearings that must be turned about first: a relation between bearings holds only for some sizes, so its way opens
/// when both bearings are known. Finds which back bearings the goals need, and no others.
/// </summary>
internal sealed class Landmarks(Working working)
{
    /// <summary>The steps to the goals by way of back bearings; null where these do not help.</summary>
    public Reached? Reach(Ledger ledger, IReadOnlyList<Symbol> goals)
    {
        Items<Symbol> needed = [.. Candidates(ledger)];
        if (!Opens(ledger, needed, goals)) return null;
        if (needed.Where(n => Opens(ledger, [n], goals)).Take(1).ToArray() is [var one]) needed = [one];
        foreach (Symbol candidate in needed)
            if (Opens(ledger, Except(needed, candidate), goals)) needed = Except(needed, candidate);
        return working.Reach(ledger, [.. needed]) is { } first && working.Reach(ledger, goals) is { } rest ? rest with { Steps = [.. first.Steps, .. rest.Steps] } : null;
    }

    private static Items<Symbol> Except(Items<Symbol> of, Symbol one) => [.. of.Where(o => o != one)];

    private IEnumerable<Symbol> Candidates(Ledger ledger) => ledger.Known.OfType<Bearing>().ToArray().Select(b => new Bearing(b.From, b.Of)).Where(b => !ledger.Knows(b) && working.Reaches(ledger, [b]));

    private bool Opens(Ledger ledger, Items<Symbol> needed, IReadOnlyList<Symbol> goals)
    {
        if (needed.Count == 0) return false;
        Ledger trial = ledger.Without(needed[0]);
        return working.Reach(trial, [.. needed]) is { Impossible: false } && working.Reaches(trial, goals);
    }
}
