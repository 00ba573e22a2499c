namespace Explain;

/// <summary>The right angles that a figure states, under every name that its lines give them.</summary>
internal static class StatedRightAngles
{
    public static IEnumerable<Corner> Of(Problem problem)
    {
        Items<Point>[] lines = [.. new Rays(problem).Lines];
        return Rays.Places(problem).SelectMany(p => (p.Kind, p.Of) switch
        {
            (PlaceKind.RightAngle, [Corner c]) => Corners(c.Vertex, On(lines, new(c.Vertex, c.First)), On(lines, new(c.Vertex, c.Second))),
            (PlaceKind.Perpendicular, [Line first, Line second]) => Crossing(On(lines, first), On(lines, second)),
            (PlaceKind.Foot, [Point foot, Point top, Line to]) => Corners(foot, [top], On(lines, to)),
            _ => [],
        }).Distinct();
    }

    private static IEnumerable<Corner> Crossing(Point[] first, Point[] second) =>
        first.Intersect(second).ToArray() is [var at] ? Corners(at, first, second) : [];

    private static IEnumerable<Corner> Corners(Point at, Point[] first, Point[] second) =>
        from a in first where a != at from b in second where b != at && b != a select new Corner(a, at, b);

    /// <summary>The points of a figure on the line of two of them.</summary>
    private static Point[] On(Items<Point>[] lines, Line line) =>
        [line.From, line.To, .. lines.Where(l => l.Contains(line.From) && l.Contains(line.To)).SelectMany(l => l).Where(p => p != line.From && p != line.To).Distinct()];
}
