namespace Explain;

/// <summary>What a statement says in simpler ones: each part of several, and the definitions of the kinds of triangles.</summary>
internal static class Meaning
{
    /// <summary>The statement itself and whatever it says by definition.</summary>
    public static IEnumerable<Statement> Of(Statement statement) => statement switch
    {
        All all => all.Of.SelectMany(Of),
        Place place => [place, .. Defined(place)],
        Compare { Terms.Count: > 2 } chain when chain.Between.All(b => b == Relation.Equal) => [chain, .. chain.Terms.Zip(chain.Terms.Skip(1), Compare.Equal)],
        _ => [statement],
    };

    /// <summary>The quantity whose value a statement gives, a right angle's included; null when it gives none.</summary>
    public static (Symbol Of, Expr Is)? Value(Statement statement) => Of(statement).Select(Stated).FirstOrDefault(v => v is not null);

    private static (Symbol, Expr)? Stated(Statement statement) => statement switch
    {
        Compare { Between: [Relation.Equal], Terms: [SymbolUse of, var value] } when value.Symbols().Count == 0 => (of.Symbol, value),
        Place { Kind: PlaceKind.RightAngle, Of: [Corner c] } => (new Angle(c.First, c.Vertex, c.Second), Expr.Degrees(90)),
        _ => null,
    };

    private static IEnumerable<Statement> Defined(Place place) => (place.Kind, place.Of) switch
    {
        (PlaceKind.RightAngledTriangle, [Polygon { Corners.Count: 3 } p, Point at]) => [Triangle(p), RightAngle(p, at)],
        (PlaceKind.IsoscelesTriangle, [Polygon { Corners.Count: 3 } p, Line first, Line second]) => [Triangle(p), Equal(first, second)],
        (PlaceKind.EquilateralTriangle, [Polygon { Corners: [var a, var b, var c] } p]) => [Triangle(p), Equal(new(a, b), new(b, c)), Equal(new(b, c), new(c, a)), Equal(new(c, a), new(a, b))],
        (PlaceKind.RegularPolygon, [Polygon { Corners.Count: 3 } p]) => Of(new Place(PlaceKind.EquilateralTriangle, [p])),
        (PlaceKind.Perpendicular, [Line first, Line second]) => Square(first, second),
        _ => [],
    };

    private static Place Triangle(Polygon corners) => new(PlaceKind.Triangle, [corners]);

    private static Place RightAngle(Polygon triangle, Point at)
    {
        Point[] ends = [.. triangle.Corners.Where(c => c != at)];
        return new(PlaceKind.RightAngle, [new Corner(ends[0], at, ends[1])]);
    }

    private static Compare Equal(Line first, Line second) => Compare.Equal(new Length(first.From, first.To), new Length(second.From, second.To));

    /// <summary>Two perpendicular lines with a common end make a right angle there.</summary>
    private static IEnumerable<Place> Square(Line first, Line second)
    {
        Point[] common = [.. new[] { first.From, first.To }.Where(p => p == second.From || p == second.To)];
        return common is [var at] ? [new(PlaceKind.RightAngle, [new Corner(Other(first, at), at, Other(second, at))])] : [];
    }

    private static Point Other(Line line, Point end) => line.From == end ? line.To : line.From;
}
