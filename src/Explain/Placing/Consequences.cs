namespace Explain;

/// <summary>What follows from measurements of a triangle that do not place its corners yet.</summary>
internal sealed class Consequences(TriangleParameters known)
{
    private static readonly Maybe Straight = Expr.Degrees(180);

    /// <summary>A quantity that is not known and its value, or its two values where only a sine tells; null where nothing follows.</summary>
    public (Symbol Of, Items<Expr> Values)? First()
    {
        Point[][] orders = [.. known.Triangle.Corners.SelectMany(p => known.Triangle.Corners.Where(q => q != p).Select(q => (Point[])[p, q, known.Triangle.Corners.First(r => r != p && r != q)]))];
        foreach ((Symbol of, Maybe value) in orders.SelectMany(o => Single(o[0], o[1], o[2])))
            if (value.Is is { } single && known.Of(of).Is is null) return (of, [single]);
        foreach ((Symbol angle, Maybe sine) in orders.SelectMany(o => Sines(o[0], o[1], o[2])))
            if (sine.Is is { } found && known.Of(angle).Is is null) return (angle, Angles(found));
        foreach ((Symbol side, Symbol other, Maybe half, Maybe square) in orders.Select(o => HalvesOf(o[0], o[1], o[2])))
            if (half.Is is { } mean && square.Is is { } found && known.Of(side).Is is null && known.Of(other).Is is null) return (side, Around(mean, found));
        return null;
    }

    private Maybe Of(MeasureKind kind) => known.Of(new Measure(kind, known.Triangle));

    private Symbol Is(MeasureKind kind) => new Measure(kind, known.Triangle);

    private IEnumerable<(Symbol, Maybe)> Single(Point p, Point q, Point r)
    {
        Symbol atP = new Angle(q, p, r), height = new DistanceToLine(r, new Line(p, q));
        Maybe area = Of(MeasureKind.Area), perimeter = Of(MeasureKind.Perimeter), inside = Of(MeasureKind.InscribedRadius);
        (Symbol pq, Symbol qr, Symbol rp) = (new Length(p, q), new Length(q, r), new Length(r, p));
        yield return (Is(MeasureKind.CircumscribedRadius), Of(MeasureKind.CircumscribedDiameter) / 2);
        yield return (Is(MeasureKind.Perimeter), 2 * Of(MeasureKind.HalfPerimeter));
        if (known.AreEqual(pq, rp)) foreach ((Symbol, Maybe) equal in Isosceles(p, q, r)) yield return equal;
        yield return (pq, perimeter - known.Of(qr) - known.Of(rp));
        yield return (qr, 2 * Of(MeasureKind.CircumscribedRadius) * known.Of(atP).Sine);
        yield return (rp, known.Of(height) / known.Of(atP).Sine);
        yield return (height, 2 * area / known.Of(pq));
        yield return (pq, 2 * area / known.Of(height));
        yield return (Is(MeasureKind.Area), known.Of(pq) * known.Of(height) / 2);
        yield return (Is(MeasureKind.Area), perimeter * inside / 2);
        yield return (Is(MeasureKind.Perimeter), 2 * area / inside);
        yield return (rp, OtherArm(perimeter, known.Of(pq), known.Of(atP).Cosine));
    }

    /// <summary>PQ = PR.</summary>
    private IEnumerable<(Symbol, Maybe)> Isosceles(Point p, Point q, Point r)
    {
        Symbol atP = new Angle(q, p, r), atQ = new Angle(p, q, r);
        if (known.AreEqual(new Length(p, q), new Length(q, r))) yield return (atP, Expr.Degrees(60));
        yield return (atQ, (Straight - known.Of(atP)) / 2);
        yield return (new Angle(p, r, q), known.Of(atQ));
        yield return (new Length(p, q), (Of(MeasureKind.Perimeter) - known.Of(new Length(q, r))) / 2);
    }

    /// <summary>The other arm of an angle where both arms and the side opposite add up to a perimeter: so long that the third side closes.</summary>
    private static Maybe OtherArm(Maybe perimeter, Maybe arm, Maybe cosine) =>
        perimeter * (perimeter - 2 * arm) / (2 * (perimeter - arm - arm * cosine));

    private IEnumerable<(Symbol, Maybe)> Sines(Point p, Point q, Point r)
    {
        Symbol atP = new Angle(q, p, r);
        yield return (atP, known.Of(new Length(q, r)) / (2 * Of(MeasureKind.CircumscribedRadius)));
        yield return (atP, known.Of(new DistanceToLine(r, new Line(p, q))) / known.Of(new Length(r, p)));
    }

    /// <summary>Half the sum of two sides and the square of half their difference, where the third side, the area and the perimeter are known: by Heron's formula.</summary>
    private (Symbol, Symbol, Maybe, Maybe) HalvesOf(Point p, Point q, Point r)
    {
        Maybe side = known.Of(new Length(p, q)), area = Of(MeasureKind.Area), half = Of(MeasureKind.Perimeter) / 2;
        return (new Length(q, r), new Length(r, p), half - side / 2, side * side / 4 - area * area / (half * (half - side)));
    }

    /// <summary>The two values as far from the mean on either side; the mean if the distance is 0, none if its square is negative.</summary>
    private static Items<Expr> Around(Expr mean, Expr square) => Evaluator.Sign(square) switch
    {
        < 0 => [],
        0 => [mean],
        _ => [mean + new Root(square), mean - new Root(square)],
    };

    /// <summary>Both angles with a sine; the right angle if it is 1, none if it is more.</summary>
    private static Items<Expr> Angles(Expr sine)
    {
        Expr acute = new Apply(Function.ArcSine, sine);
        return Evaluator.Compare(sine, 1) switch
        {
            > 0 => [],
            0 => [Expr.Degrees(90)],
            _ => [acute, Expr.Degrees(180) - acute],
        };
    }
}
