namespace Explain;

/// <summary>
/// Shows the bounds of a quantity: its formula in the measurements, the direction in which each moves it, and the two corners
/// that these directions name. Where a measurement moves it both ways, the extremes are inside and nothing is shown here.
/// </summary>
internal sealed class BoundsWorking(RuleBook book, Topic topic, Items<Premise> premises, Ledger ledger, Func<Value, Rounding> rounding)
{
    private readonly Tolerances tolerances = new(premises, ledger);

    /// <param name="quantity">What varies.</param>
    /// <param name="others">What else was asked for; a remark says which of it varies alike.</param>
    /// <param name="shown">Takes the claim that gives the bounds.</param>
    public Items<Step>? Of(Symbol quantity, Items<Symbol> others, Dictionary<Symbol, (ClaimId, Bounds)> shown)
    {
        if (tolerances.Extremes(quantity) is not { IsMonotone: true } bounded) return null;
        Bounds bounds = tolerances.Of(quantity, bounded);
        Items<Trend> trends = [.. bounded.Trends.OrderBy(t => Array.FindIndex([.. premises], p => p.Id == ledger.ClaimOf(t.With)))];
        Items<Step> written = new BoundsFormula(book, topic, ledger, tolerances).Of(quantity);
        Calculation formula = (Calculation)written[^1];
        Trending trending = new(ledger, tolerances);
        Deduction[] varies = [.. trends.Select(t => trending.Of(quantity, formula, t))];
        Series corners = Corners(quantity, formula.Formula, varies, trends) with { Remarks = new BoundsRemarks(ledger, tolerances, rounding).Of(quantity, bounded, others) };
        shown[quantity] = (corners.Id, bounds with { Proof = new Monotone([.. varies.Select(v => v.Id)]) });
        return [.. written, .. varies, corners];
    }

    private Series Corners(Symbol quantity, Expr formula, Deduction[] varies, Items<Trend> trends)
    {
        ClaimId id = ledger.NextStep();
        RuleUse why = new(new("ends-of-the-bounds"), [], [.. varies.Select(v => v.Id)]);
        SeriesRow Row(Phrase label, string name, bool greatest) =>
            new(label, new CornerCells(ledger.ForCase(id, name), premises, why).Cells(quantity, formula, trends, greatest));
        bool together = trends.All(t => t.Direction == Direction.Rises);
        SeriesRow[] rows =
        [
            Row(together ? TopicPhrases.UpperBounds() : TopicPhrases.Greatest(), "1", true),
            Row(together ? TopicPhrases.LowerBounds() : TopicPhrases.Least(), "2", false),
        ];
        Items<Phrase> columns = [.. trends.Select(t => TopicPhrases.Column(ledger.Arrangement.Canonical(t.With))), TopicPhrases.Column(quantity)];
        return new Series(id, new All([.. rows.SelectMany(r => r.Cells).Select(c => c.Says)]), why, columns, [.. rows], null);
    }
}
