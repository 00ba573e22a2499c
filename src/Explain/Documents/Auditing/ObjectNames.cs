namespace Explain;

/// <summary>The ways of naming an object of the figure by its letters.</summary>
internal static class ObjectNames
{
    /// <summary>The letter that a formula uses for half the perimeter.</summary>
    public const string HalfPerimeter = "s";

    public static IEnumerable<string> Of(Named named) => named switch
    {
        Polygon p => Round([.. p.Corners]),
        Corner c => Both(c.First, c.Vertex, c.Second),
        Line l => Both(l.From, l.To),
        _ => Mentions.Points(named).Select(p => p.Name),
    };

    public static IEnumerable<string> Of(Symbol symbol) => symbol switch
    {
        Length l => Both(l.From, l.To),
        Angle a => Both(a.First, a.Vertex, a.Second),
        Ratio r => Of(r.Of),
        DistanceToLine d => [d.From.Name, .. Of(d.To)],
        Measure { Kind: MeasureKind.HalfPerimeter } m => [HalfPerimeter, .. Of(m.Of)],
        Measure m => Of(m.Of),
        Letter l => [l.Name],
        _ => Mentions.Points(symbol).Select(p => p.Name),
    };

    private static IEnumerable<string> Both(params Point[] points) => [Joined(points), Joined(points.Reverse())];

    /// <summary>Round the shape from any corner, either way.</summary>
    private static IEnumerable<string> Round(Point[] corners) =>
        corners.SelectMany((_, i) => (Point[])[.. corners.Skip(i), .. corners.Take(i)] is var from ? Both(from) : []);

    private static string Joined(IEnumerable<Point> points) => string.Concat(points.Select(p => p.Name));
}
