namespace Explain;

/// <summary>Which names of an angle mean the same rays, from claims that put points in line.</summary>
/// <param name="places">The claims to go by.</param>
/// <param name="figures">The figures, which show on which side of a point a foot is.</param>
/// <param name="others">Claims that say it, and are then to be gone by.</param>
internal sealed class RayNames(Items<Place> places, Items<Layout> figures, Items<Place> others = default)
{
    private readonly Point[] points = [.. places.SelectMany(Mentions.Points).Distinct().OrderBy(p => p.Name, StringComparer.Ordinal)];

    public Symbol Of(Symbol symbol) => symbol switch
    {
        Angle a => Of(a),
        Ratio r => new Ratio(r.Function, Of(r.Of)),
        _ => symbol,
    };

    public Expr Of(Expr expr) => expr.Substitute(e => e is SymbolUse use ? new SymbolUse(Of(use.Symbol)) : null);

    public Statement Of(Statement statement) => statement switch
    {
        Compare c => c with { Terms = [.. c.Terms.Select(Of)] },
        Place p => p with { Of = [.. p.Of.Select(n => n is Corner c ? new Corner(First(c.Vertex, c.First), c.Vertex, First(c.Vertex, c.Second)) : n)] },
        AnyOf a => new AnyOf([.. a.Of.Select(Of)]),
        _ => statement,
    };

    private Angle Of(Angle angle) =>
        angle with { First = First(angle.Vertex, angle.First), Second = First(angle.Vertex, angle.Second) };

    private Point First(Point from, Point through)
    {
        HashSet<Point> ray = [through];
        while (points.FirstOrDefault(p => !ray.Contains(p) && ray.Any(r => Same(from, p, r))) is { } more) ray.Add(more);
        return ray.MinBy(p => p.Name, StringComparer.Ordinal)!;
    }

    private bool Same(Point from, Point first, Point second) => places.Any(p =>
        p is { Kind: PlaceKind.Foot, Of: [Point foot, _, Line line] } ? OnFootRay(foot, line, from, first, second) : InOrder(Order(p), from, first, second));

    private static Items<Point> Order(Place place) => place.Kind switch
    {
        PlaceKind.InLine => [.. place.Of.OfType<Point>()],
        PlaceKind.Between or PlaceKind.Midpoint when place.Of is [Point on, Line l] => [l.From, on, l.To],
        PlaceKind.OnProduced when place.Of is [Point on, Line l] => [l.From, l.To, on],
        _ => [],
    };

    private static bool InOrder(Items<Point> line, Point from, Point first, Point second)
    {
        List<Point> order = [.. line];
        int corner = order.IndexOf(from), i = order.IndexOf(first), j = order.IndexOf(second);
        return corner >= 0 && i >= 0 && j >= 0 && i != corner && j != corner && i < corner == j < corner;
    }

    /// <summary>A foot is on the line; on which side of its end is an order of points, which the figures show.</summary>
    private bool OnFootRay(Point foot, Line line, Point from, Point first, Point second)
    {
        if (from != line.From && from != line.To) return false;
        Point end = from == line.From ? line.To : line.From;
        if (new HashSet<Point> { first, second } is var pair && !pair.SetEquals([foot, end])) return false;
        if (others.Any(o => Order(o) is { Count: > 0 } order && new[] { from, foot, end }.All(order.Contains))) return false;
        return figures.Count > 0 && figures.All(f => f.Find(from) is { } start && f.Find(foot) is { } at && f.Find(end) is { } far
            && Vector.Dot(at - start, far - start).Sign > 0);
    }
}
