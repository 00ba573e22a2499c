namespace Explain;

/// <summary>
/// Puts points for points in everything that names them: the pattern points of a rule for the points of a figure.
/// Points that the map does not mention stay.
/// </summary>
internal sealed class Renaming(IReadOnlyDictionary<Point, Point> map)
{
    public Point Of(Point point) => map.GetValueOrDefault(point, point);

    public Line Of(Line line) => new(Of(line.From), Of(line.To));

    public Polygon Of(Polygon polygon) => new(Of(polygon.Corners));

    public Corner Of(Corner corner) => new(Of(corner.First), Of(corner.Vertex), Of(corner.Second));

    public Angle Of(Angle angle) => angle with { First = Of(angle.First), Vertex = Of(angle.Vertex), Second = Of(angle.Second) };

    public Named Of(Named named) => named switch
    {
        Point p => Of(p),
        Line l => Of(l),
        Polygon p => Of(p),
        Corner c => Of(c),
        Circle c => new Circle(Of(c.Centre), c.Through is null ? null : Of(c.Through)),
        _ => throw new ArgumentException(named.GetType().Name, nameof(named)),
    };

    public Symbol Of(Symbol symbol) => symbol switch
    {
        Length l => new Length(Of(l.From), Of(l.To)),
        Angle a => Of(a),
        DistanceToLine d => new DistanceToLine(Of(d.From), Of(d.To)),
        Ratio r => new Ratio(r.Function, Of(r.Of)),
        Measure m => new Measure(m.Kind, Of(m.Of)),
        Bearing b => new Bearing(Of(b.Of), Of(b.From)),
        _ => symbol,
    };

    public Expr Of(Expr expr) => expr.Substitute(e => e is SymbolUse use ? new SymbolUse(Of(use.Symbol)) : null);

    public Statement Of(Statement statement) => statement switch
    {
        Place p => new Place(p.Kind, Items(p.Of, Of)),
        Compare c => c with { Terms = Items(c.Terms, Of) },
        Alike a => a with { First = Of(a.First), Second = Of(a.Second) },
        All a => new All(Items(a.Of, Of)),
        AnyOf a => new AnyOf(Items(a.Of, Of)),
        HowMany h => h with { Such = Items(h.Such, Of) },
        _ => statement,
    };

    private Items<Point> Of(Items<Point> points) => Items(points, Of);

    private static Items<T> Items<T>(Items<T> items, Func<T, T> each) => [.. items.Select(each)];
}
