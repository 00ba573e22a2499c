namespace Explain;

/// <summary>What the givens tell of a triangle's sides and angles, under the names of its corners.</summary>
internal sealed class TriangleParameters
{
    private readonly Dictionary<Symbol, Expr> known = [];

    public TriangleParameters(Polygon triangle, Problem problem, Rays rays)
    {
        (Triangle, Rays) = (triangle, rays);
        foreach (Given given in problem.Given) Learn(rays.Through(given.Of, triangle), given.Value);
        foreach (Place place in Rays.Places(problem))
        {
            if (place is { Kind: PlaceKind.RightAngle, Of: [Corner c] }) Learn(rays.Through(new Angle(c.First, c.Vertex, c.Second), triangle), Expr.Degrees(90));
            if (place is { Kind: PlaceKind.RightAngledTriangle, Of: [Polygon { Corners: [var a, var b, var d] }, ..] }) Learn(new Angle(a, b, d), Expr.Degrees(90));
        }
    }

    public Polygon Triangle { get; }

    public Rays Rays { get; }

    public Expr? Side(Point from, Point to) => known.GetValueOrDefault(new Length(from, to));

    public Expr? AngleAt(Point vertex)
    {
        Point[] others = [.. Triangle.Corners.Where(c => c != vertex)];
        if (known.TryGetValue(new Angle(others[0], vertex, others[1]), out Expr? own)) return own;
        Expr?[] rest = [.. others.Select(o => known.GetValueOrDefault(new Angle(vertex, o, others.First(p => p != o))))];
        return rest is [{ } first, { } second] ? new Difference(Expr.Degrees(180), new Sum(first, second)) : null;
    }

    private void Learn(Symbol symbol, Expr value)
    {
        if (symbol is Length or Angle) known.TryAdd(symbol, value);
    }
}
