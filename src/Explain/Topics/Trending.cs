namespace Explain;

/// <summary>Says why a quantity moves with a measurement as it does: by its formula, where a teacher can show it, else by its rate of change.</summary>
internal sealed class Trending(Ledger ledger, Tolerances tolerances)
{
    public Deduction Of(Symbol quantity, Calculation formula, Trend trend)
    {
        Symbol with = ledger.Arrangement.Canonical(trend.With);
        return new(ledger.NextStep(), new Varies(quantity, with, trend.Direction == Direction.Rises), Why(formula, trend with { With = with }));
    }

    private RuleUse Why(Calculation formula, Trend trend)
    {
        Items<ClaimId> from = [formula.Id, ledger.ClaimOf(trend.With)];
        if (trend.Direction == Direction.Rises && IsMultiple(formula.Formula, trend.With)) return new(new("as-a-multiple"), [new("measured", new Amount(trend.With), false)], from);
        return tolerances.Box(formula.Formula) is { } box && new Tracing(trend.With, box).Through(formula.Formula, trend.Direction) is { Count: > 0 } links
            ? new(new("link-by-link"), [new("links", new Links(links), false)], from) : new(new("one-direction"), [], from);
    }

    /// <summary>Whether the formula is the measurement times something that does not hold it.</summary>
    public static bool IsMultiple(Expr formula, Symbol measured) => formula switch
    {
        SymbolUse use => use.Symbol == measured,
        Product(var a, var b) => IsMultiple(a, measured) && !b.Symbols().Contains(measured) || IsMultiple(b, measured) && !a.Symbols().Contains(measured),
        Quotient(var a, var b) => IsMultiple(a, measured) && !b.Symbols().Contains(measured),
        _ => false,
    };
}
