namespace Explain;

/// <summary>The points that are mentioned, in order.</summary>
internal static class Mentions
{
    public static IEnumerable<Point> Points(Named named) => named switch
    {
        Point p => [p],
        Line l => [l.From, l.To],
        Polygon p => p.Corners,
        Corner c => [c.First, c.Vertex, c.Second],
        Circle c => c.Through is null ? [c.Centre] : [c.Centre, c.Through],
        _ => [],
    };

    public static IEnumerable<Point> Points(Symbol symbol) => symbol switch
    {
        Length l => [l.From, l.To],
        Angle a => [a.First, a.Vertex, a.Second],
        DistanceToLine d => [d.From, .. Points(d.To)],
        Bearing b => [b.Of, b.From],
        Measure m => m.Of.Corners,
        Ratio r => Points(r.Of),
        _ => [],
    };

    public static IEnumerable<Point> Points(Expr expr) => expr.Symbols().SelectMany(Points);

    public static IEnumerable<Point> Points(Statement statement) => statement switch
    {
        Place p => p.Of.SelectMany(Points),
        Alike a => a.First.Corners.Concat(a.Second.Corners),
        Compare c => c.Terms.SelectMany(Points),
        All a => a.Of.SelectMany(Points),
        AnyOf a => a.Of.SelectMany(Points),
        _ => [],
    };
}
