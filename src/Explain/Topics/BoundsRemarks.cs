namespace Explain;

/// <summary>What bounds teach: what else varies alike, and which measurement matters most.</summary>
internal sealed class BoundsRemarks(Ledger ledger, Tolerances tolerances, Func<Value, Rounding> rounding)
{
    public Items<Remark> Of(Symbol quantity, Bounded bounded, Items<Symbol> others) => [.. Alike(bounded, others), .. Most(quantity, bounded)];

    /// <summary>Other answers that are greatest and least with the same bounds of the measurements.</summary>
    private IEnumerable<Remark> Alike(Bounded bounded, Items<Symbol> others)
    {
        (Symbol Of, Bounds Bounds)[] alike =
            [.. others.Select(o => (Of: o, Found: tolerances.Extremes(o))).Where(o => o.Found is { } found && SameCorners(found.Trends, bounded.Trends)).Select(o => (o.Of, tolerances.Of(o.Of, o.Found!)))];
        if (alike.Length > 0)
            yield return new(TopicPhrases.SameHolds([.. alike.Select(a => a.Of)], [.. alike.Select(a => Between(a.Of, a.Bounds))]), null);
    }

    private static bool SameCorners(Items<Trend> some, Items<Trend> all) => some.Count > 0 && some.All(all.Contains) && some.All(t => t.Direction != Direction.Neither);

    private Phrase Between(Symbol of, Bounds bounds)
    {
        Rounding rule = rounding(bounds.Lower);
        Unit unit = rule.UnitFor(bounds.Lower.Unit);
        return TopicPhrases.IsBetween(of, new Quantity(Exact.Of(NumberText.LowerNumber(bounds.Lower, rule)), unit), new Quantity(Exact.Of(NumberText.UpperNumber(bounds.Upper, rule)), unit));
    }

    /// <summary>The one measurement that, alone, moves the quantity over more than half of the way between its bounds.</summary>
    private IEnumerable<Remark> Most(Symbol quantity, Bounded bounded) => bounded.Trends.Count < 2 ? [] : bounded.Trends
        .Select(t => new MostOf(quantity, ledger.Arrangement.Canonical(t.With))).Where(tolerances.Holds).Select(m => new Remark(TopicPhrases.MostOf(m.What, m.With), m));
}
