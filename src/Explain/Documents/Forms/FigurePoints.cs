namespace Explain;

/// <summary>The points that a problem speaks of.</summary>
internal static class FigurePoints
{
    public static Items<string> Of(Problem problem) =>
        [.. problem.Figure.SelectMany(f => Of(f.Says)).Concat(problem.Given.SelectMany(g => Of(g.Of))).Concat(problem.Find.SelectMany(g => g.Wanted is { } w ? Of(w) : []))
            .Concat(problem.Names.SelectMany(n => PointNames.Distinct(n.Of) ?? [])).Select(p => p.Name).Distinct(StringComparer.Ordinal)];

    private static IEnumerable<Point> Of(Statement statement) => statement switch
    {
        Place place => place.Of.SelectMany(Of),
        Alike alike => [.. alike.First.Corners, .. alike.Second.Corners],
        Compare compare => compare.Terms.SelectMany(t => t.Symbols()).SelectMany(Of),
        All all => all.Of.SelectMany(Of),
        AnyOf any => any.Of.SelectMany(Of),
        _ => [],
    };

    private static IEnumerable<Point> Of(Named named) => named switch
    {
        Point p => [p],
        Line l => [l.From, l.To],
        Polygon p => p.Corners,
        Corner c => [c.First, c.Vertex, c.Second],
        Circle c => c.Through is { } through ? [c.Centre, through] : [c.Centre],
        _ => [],
    };

    private static IEnumerable<Point> Of(Symbol symbol) => symbol switch
    {
        Length l => [l.From, l.To],
        Angle a => [a.First, a.Vertex, a.Second],
        DistanceToLine d => [d.From, d.To.From, d.To.To],
        Bearing b => [b.Of, b.From],
        Measure m => m.Of.Corners,
        Ratio r => Of(r.Of),
        _ => [],
    };
}
