namespace Explain;

/// <summary>Writes a known quantity in terms of the measurements alone: by a relation of the topic that does so, else by putting the steps into one another.</summary>
internal sealed class BoundsFormula(RuleBook book, Topic topic, Ledger ledger, Tolerances tolerances)
{
    /// <summary>The steps; the last is the formula.</summary>
    public Items<Step> Of(Symbol quantity)
    {
        Ledger measured = ledger.Without(quantity);
        Items<Step> parts = quantity is Length height ? Parts(measured, height) : [];
        if (new Working(book, topic.Closed).Reach(measured, [quantity]) is { Impossible: false, Steps: [Calculation closed] } && tolerances.Covers(closed.Formula))
        {
            ledger.After(measured);
            return [.. parts, closed];
        }

        Expr formula = tolerances.Open(ledger.ClaimOf(quantity));
        RuleUse why = new(new("earlier-steps"), [], [ledger.ClaimOf(quantity), .. formula.Symbols().Select(ledger.ClaimOf)]);
        return [Calculate.By(ledger, quantity, formula, why)];
    }

    /// <summary>The two parts of a baseline by the tangents of the angles at its ends, where the height meets it between them.</summary>
    private Items<Step> Parts(Ledger measured, Length height)
    {
        foreach (Place between in ledger.Facts.Where(f => f is { Kind: PlaceKind.Between, Of: [Point foot, Line] } && (foot == height.From || foot == height.To)))
        {
            Point foot = (Point)between.Of[0], top = foot == height.From ? height.To : height.From;
            Deduce deduce = new(book, measured);
            return [.. ((Line)between.Of[1]) is var line ? new[] { line.From, line.To }.Select(end => deduce.Law("tangent-ratio", new Length(end, foot), ("A", end), ("B", foot), ("C", top))) : []];
        }

        return [];
    }
}
