namespace Explain;

/// <summary>
/// Shows the bounds of a quantity: its formula in the measurements, the direction in which each moves it, and the two corners
/// that these directions name. Where a measurement moves it both ways, the extremes are inside and nothing is shown here.
/// </summary>
internal sealed class BoundsWorking(RuleBook book, Topic topic, Items<Premise> premises, Ledger ledger)
{
    private readonly Tolerances tolerances = new(premises, ledger);

    public Passage? Of(Symbol quantity, Dictionary<Symbol, (ClaimId, Bounds)> shown)
    {
        if (tolerances.Extremes(quantity) is not { IsMonotone: true } bounded) return null;
        Bounds bounds = tolerances.Of(quantity, bounded);
        Calculation formula = Formula(quantity);
        Deduction[] varies = [.. bounded.Trends.Select(t => Direction(quantity, formula.Id, t))];
        Series corners = Corners(quantity, formula.Formula, varies, bounded.Trends);
        shown[quantity] = (corners.Id, bounds with { Proof = new Monotone([.. varies.Select(v => v.Id)]) });
        return new Passage(PassageUse.Bounds, [formula, .. varies, corners]) { Heading = TopicPhrases.BoundsHeading() };
    }

    private Calculation Formula(Symbol quantity)
    {
        Ledger measured = ledger.Without(quantity);
        if (new Working(book, topic.Closed).Reach(measured, [quantity]) is { Impossible: false, Steps: [Calculation closed] })
        {
            ledger.After(measured);
            return closed;
        }

        Expr formula = tolerances.Open(ledger.ClaimOf(quantity));
        RuleUse why = new(new("earlier-steps"), [], [ledger.ClaimOf(quantity), .. formula.Symbols().Select(ledger.ClaimOf)]);
        return Calculate.By(ledger, quantity, formula, why);
    }

    private Deduction Direction(Symbol quantity, ClaimId formula, Trend trend) => new(ledger.NextStep(),
        new Varies(quantity, ledger.Arrangement.Canonical(trend.With), trend.Direction == Explain.Direction.Rises),
        new RuleUse(new("one-direction"), [], [formula, ledger.ClaimOf(trend.With)]));

    private Series Corners(Symbol quantity, Expr formula, Deduction[] varies, Items<Trend> trends)
    {
        ClaimId id = ledger.NextStep();
        RuleUse why = new(new("ends-of-the-bounds"), [], [.. varies.Select(v => v.Id)]);
        SeriesRow Row(Phrase label, string name, bool greatest) =>
            new(label, new CornerCells(ledger.ForCase(id, name), premises, why).Cells(quantity, formula, trends, greatest));
        SeriesRow[] rows = [Row(TopicPhrases.Greatest(), "1", true), Row(TopicPhrases.Least(), "2", false)];
        Items<Phrase> columns = [.. trends.Select(t => TopicPhrases.Column(ledger.Arrangement.Canonical(t.With))), TopicPhrases.Column(quantity)];
        return new Series(id, new All([.. rows.SelectMany(r => r.Cells).Select(c => c.Says)]), why, columns, [.. rows], null);
    }
}
