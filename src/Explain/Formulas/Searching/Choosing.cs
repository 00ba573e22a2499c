namespace Explain;

/// <summary>Of the places where a formula may be least (or greatest, with sign −1), the one where it is.</summary>
internal sealed class Choosing(Expr formula, Unit unit, int sign)
{
    private const int Places = 15;

    /// <summary>Null when digits stay undecided.</summary>
    public Extreme? Of(Items<Spot> spots)
    {
        Spot first = spots[0];
        if (spots.All(s => s.IsExact) && Least(spots) is { } least && Evaluator.Evaluate(Closed(least)) is Evaluated found)
            return new(found.Value, least.Place, Closed(least));
        Enclosure all = spots.Select(s => s.Value).Aggregate(Enclosure.Hull).At(Enclosure.Ladder[0]);
        Enclosure value = sign < 0 ? -all : all;
        return Decimals.CandidateIn(value, Places) is null ? new(new(null, value, unit), first.Place, null) : null;
    }

    private Spot? Least(Items<Spot> spots)
    {
        Spot? least = spots[0];
        foreach (Spot next in spots.Skip(1))
        {
            if (Evaluator.Compare(Closed(next), Closed(least)) is not { } compared) return null;
            if (compared * sign < 0) least = next;
        }

        return least;
    }

    private Expr Closed(Spot spot) => formula.Substitute(node => node is SymbolUse(var symbol)
        && spot.Place.First(l => l.Of.Equals(symbol)).At is { Exact: { } exact } at ? new Quantity(exact, at.Unit) : null);
}
