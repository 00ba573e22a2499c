namespace Explain;

/// <summary>Points that the figure puts on the sides of a triangle or on the sides produced, in order along each line.</summary>
internal sealed class Rays(Problem problem)
{
    private readonly Items<Point>[] lines = [.. Places(problem).Select(Line).Where(l => l.Count > 2)];

    public static IEnumerable<Place> Places(Problem problem) => problem.Figure.SelectMany(f => Meaning.Of(f.Says)).OfType<Place>();

    /// <summary>The triangles that the figure states, by definition or in so many words.</summary>
    public static IEnumerable<Polygon> Triangles(Problem problem) => Places(problem).Where(p => p.Kind == PlaceKind.Triangle).Select(p => p.Of[0]).OfType<Polygon>();

    public IEnumerable<Items<Point>> Lines => lines;

    /// <summary>The angle with its arms named by corners of the triangle where they run through them.</summary>
    public Symbol Through(Symbol symbol, Polygon triangle) => symbol is not Angle angle ? symbol
        : angle with { First = Corner(angle.Vertex, angle.First, triangle), Second = Corner(angle.Vertex, angle.Second, triangle) };

    private Point Corner(Point from, Point to, Polygon triangle) => triangle.Corners.Contains(to) ? to
        : triangle.Corners.FirstOrDefault(c => c != from && lines.Any(l => SameSide(l, from, c, to))) ?? to;

    private static bool SameSide(Items<Point> line, Point from, Point first, Point second)
    {
        List<Point> order = [.. line];
        int corner = order.IndexOf(from), i = order.IndexOf(first), j = order.IndexOf(second);
        return corner >= 0 && i >= 0 && j >= 0 && i < corner == j < corner;
    }

    private static Items<Point> Line(Place place) => place.Kind switch
    {
        PlaceKind.InLine => [.. place.Of.OfType<Point>()],
        PlaceKind.Between or PlaceKind.Midpoint when place.Of is [Point on, Line l] => [l.From, on, l.To],
        PlaceKind.OnProduced when place.Of is [Point on, Line l] => [l.From, l.To, on],
        _ => [],
    };
}
