namespace Explain;

/// <summary>The distance from a corner of a triangle to the line of the opposite side.</summary>
internal sealed class Heights(RuleBook book, Ledger ledger, Working working)
{
    /// <summary>The steps and the quantity that is the distance; null when they cannot be found.</summary>
    public (Items<Step> Steps, Symbol Is)? Find(DistanceToLine distance)
    {
        Symbol[] angles = [new Angle(distance.To.To, distance.To.From, distance.From), new Angle(distance.To.From, distance.To.To, distance.From)];
        if (working.Reach(ledger, angles) is not { Impossible: false, Cases.Count: 0 } first) return null;
        if (Square(distance) is { } right) return Reach(right, [.. first.Steps]);
        Deduce deduce = new(book, ledger);
        Instruction foot = deduce.Foot(distance.From, distance.To, TopicPhrases.DrawTheShortestDistance());
        Point f = (Point)foot.Makes[0], p = distance.To.From, q = distance.To.To;
        ledger.Spell([new Length(distance.From, f), new Length(p, f), new Length(f, q)]);
        Deduction? place = deduce.By("foot-between", ("F", f), ("T", distance.From), ("P", p), ("Q", q))
            ?? deduce.By("foot-beyond", ("F", f), ("T", distance.From), ("P", p), ("Q", q))
            ?? deduce.By("foot-beyond", ("F", f), ("T", distance.From), ("P", q), ("Q", p));
        return place is null ? null : Reach(new Length(distance.From, f), [.. first.Steps, foot, place]);
    }

    /// <summary>The side that is itself the perpendicular, where an angle of the baseline is right.</summary>
    private Length? Square(DistanceToLine distance) => new[] { (distance.To.From, distance.To.To), (distance.To.To, distance.To.From) }
        .Where(e => ledger.Compare(new SymbolUse(new Angle(e.Item2, e.Item1, distance.From)), Expr.Degrees(90)) == 0)
        .Select(e => new Length(distance.From, e.Item1)).FirstOrDefault();

    private (Items<Step>, Symbol)? Reach(Symbol height, Items<Step> before) =>
        working.Reach(ledger, [height]) is { Impossible: false, Cases.Count: 0 } reached ? ([.. before, .. reached.Steps], height) : null;
}
