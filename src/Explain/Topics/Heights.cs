namespace Explain;

/// <summary>The distance from a corner of a triangle to the line of the opposite side.</summary>
internal sealed class Heights(RuleBook book, Ledger ledger, Working working)
{
    /// <summary>The steps and the quantity that is the distance; null when they cannot be found.</summary>
    public (Items<Step> Steps, Symbol Is)? Find(DistanceToLine distance)
    {
        Symbol[] angles = [new Angle(distance.To.To, distance.To.From, distance.From), new Angle(distance.To.From, distance.To.To, distance.From)];
        if (working.Reach(ledger, angles) is not { Impossible: false, Cases.Count: 0 } first) return null;
        Deduce deduce = new(book, ledger);
        foreach ((Point end, Point other) in new[] { (distance.To.From, distance.To.To), (distance.To.To, distance.To.From) })
            if (deduce.By("perpendicular-side", ("T", distance.From), ("Q", end), ("P", other)) is { } itself) return Reach(new Length(distance.From, end), [.. first.Steps, itself]);
        Instruction foot = deduce.Foot(distance.From, distance.To, TopicPhrases.DrawTheShortestDistance());
        Point f = (Point)foot.Makes[0], p = distance.To.From, q = distance.To.To;
        ledger.Spell([new Length(distance.From, f), new Length(p, f), new Length(f, q)]);
        Deduction shortest = deduce.By("shortest-distance", ("F", f), ("T", distance.From), ("P", p), ("Q", q))!;
        Deduction? place = deduce.By("foot-between", ("F", f), ("T", distance.From), ("P", p), ("Q", q))
            ?? deduce.By("foot-beyond", ("F", f), ("T", distance.From), ("P", p), ("Q", q))
            ?? deduce.By("foot-beyond", ("F", f), ("T", distance.From), ("P", q), ("Q", p));
        return place is null ? null : Reach(new Length(distance.From, f), [.. first.Steps, foot, shortest, place]);
    }

    private (Items<Step>, Symbol)? Reach(Symbol height, Items<Step> before) =>
        working.Reach(ledger, [height]) is { Impossible: false, Cases.Count: 0 } reached ? ([.. before, .. reached.Steps], height) : null;
}
