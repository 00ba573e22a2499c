namespace Explain;

/// <summary>Says why a quantity has no bounds, in words of the measurements.</summary>
internal sealed class BoundsFault(Items<Premise> premises, Ledger ledger)
{
    /// <summary>What is wrong; null where bounds exist, or where it cannot be decided whether they do.</summary>
    public (string Code, Phrase Message, Phrase Remedy)? Of(Symbol quantity, Symbol wanted)
    {
        Tolerances tolerances = new(premises, ledger);
        if (!tolerances.Any) return (ErrorCodes.NotEnoughData, ErrorPhrases.NoTolerance(wanted), ErrorPhrases.WriteATolerance());
        if (tolerances.Range(quantity) is not OutsideDomain) return null;
        Phrase? angles = ledger.Facts.Where(f => f.Kind == PlaceKind.Triangle).Select(t => Angles(t, wanted, tolerances)).FirstOrDefault(p => p is not null);
        return (ErrorCodes.NoBounds, angles ?? ErrorPhrases.NoBounds(wanted), ErrorPhrases.MeasureMoreClosely());
    }

    private Phrase? Angles(Place triangle, Symbol wanted, Tolerances tolerances)
    {
        Symbol[] given = [.. TriangleParts.Angles(triangle).Select(a => ledger.Arrangement.Canonical((Symbol)a)).Where(a => ledger.Knows(a) && ledger.ClaimOf(a).IsGiven)];
        if (given is not [var first, var second] || tolerances.Box(new Sum(first, second)) is not { } box) return null;
        if (Extremes.Of(new Sum(first, second), box) is not Bounded { Greatest.Value: { Exact: { } most } value } || most.CompareTo(Exact.Of(180)) < 0) return null;
        return ErrorPhrases.NoBoundsOfAngles(wanted, first, second, new Quantity(most, value.Unit));
    }
}
