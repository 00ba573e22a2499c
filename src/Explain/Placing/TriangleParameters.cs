namespace Explain;

/// <summary>What the givens tell of a triangle's sides and angles, under the names of its corners.</summary>
internal sealed class TriangleParameters
{
    private readonly Dictionary<Symbol, Expr> known;
    private readonly Items<(Symbol First, Symbol Second)> equal;

    public TriangleParameters(Polygon triangle, Problem problem, Rays rays)
    {
        (Triangle, Rays, known) = (triangle, rays, []);
        foreach (Given given in problem.Given) Learn(rays.Through(given.Of, triangle), given.Value);
        foreach (FigureStatement statement in problem.Figure)
            if (Meaning.Value(statement.Says) is var (of, value)) Learn(rays.Through(of, triangle), value);
        equal = [.. problem.Figure.SelectMany(f => Meaning.Of(f.Says)).Select(s => Pair(s, rays, triangle)).OfType<(Symbol, Symbol)>()];
        IsShapeOnly = known.Keys.All(k => k is Angle);
        if (IsShapeOnly) Learn(TriangleParts.Sides(triangle).First(), new Quantity(Exact.One, Unit.Metre));
        for (int i = 0; i < equal.Count; i++)
            foreach ((Symbol first, Symbol second) in equal) Share(first, second);
    }

    private TriangleParameters(TriangleParameters other, Symbol of, Expr value) =>
        (Triangle, Rays, equal, known) = (other.Triangle, other.Rays, other.equal, new(other.known) { [of] = value });

    public Polygon Triangle { get; }

    public Rays Rays { get; }

    /// <summary>Whether nothing but angles is known, so that only the shape can be: it is drawn with a side of 1 m.</summary>
    public bool IsShapeOnly { get; }

    public Expr? Side(Point from, Point to) => known.GetValueOrDefault(new Length(from, to));

    public Expr? AngleAt(Point vertex)
    {
        Point[] others = [.. Triangle.Corners.Where(c => c != vertex)];
        if (known.TryGetValue(new Angle(others[0], vertex, others[1]), out Expr? own)) return own;
        Expr?[] rest = [.. others.Select(o => known.GetValueOrDefault(new Angle(vertex, o, others.First(p => p != o))))];
        return rest is [{ } first, { } second] ? new Difference(Expr.Degrees(180), new Sum(first, second)) : null;
    }

    /// <summary>Whether any side is known.</summary>
    public bool HasSide => TriangleParts.Sides(Triangle).Any(known.ContainsKey);

    /// <summary>A measure that fixes the size of a shape; null where none is given.</summary>
    public (Symbol Of, Expr Value)? Size => known.Where(k => k.Key is not Angle).Select(k => ((Symbol, Expr)?)(k.Key, k.Value)).FirstOrDefault();

    /// <summary>What is known of a quantity of the triangle.</summary>
    public Maybe Of(Symbol symbol) => new(symbol is Angle angle ? AngleAt(angle.Vertex) : known.GetValueOrDefault(symbol));

    /// <summary>The same with one more quantity known.</summary>
    public TriangleParameters With(Symbol of, Expr value) => new(this, of, value);

    /// <summary>Whether two quantities are stated to be equal.</summary>
    public bool AreEqual(Symbol first, Symbol second) => equal.Any(e => (e.First == first && e.Second == second) || (e.First == second && e.Second == first));

    private static (Symbol, Symbol)? Pair(Statement says, Rays rays, Polygon triangle) => says is Compare { Between: [Relation.Equal], Terms: [SymbolUse first, SymbolUse second] }
        ? (rays.Through(first.Symbol, triangle), rays.Through(second.Symbol, triangle)) : null;

    private void Share(Symbol first, Symbol second)
    {
        if (known.TryGetValue(first, out Expr? one)) Learn(second, one);
        if (known.TryGetValue(second, out Expr? other)) Learn(first, other);
    }

    private void Learn(Symbol symbol, Expr value)
    {
        if (symbol is Length or Angle or Measure or DistanceToLine) known.TryAdd(symbol, value);
    }
}
