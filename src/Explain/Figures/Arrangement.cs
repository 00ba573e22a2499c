namespace Explain;

/// <summary>
/// Which points lie on one straight line, and in which order. It tells which angles are one angle under two names:
/// angle QPT and angle QPS when S is on the ray PT.
/// </summary>
/// <param name="Lines">Points of each line, in order.</param>
/// <param name="Points">All points, those of the problem first.</param>
internal sealed record Arrangement(Items<Items<Point>> Lines, Items<Point> Points)
{
    /// <summary>Corner, then two points on one ray from it, where no more is known of their order.</summary>
    public Items<(Point From, Point First, Point Second)> Rays { get; init; }

    public Arrangement With(Items<Point> line) => this with { Lines = Lines.With(line), Points = [.. Points, .. line.Where(p => !Points.Contains(p))] };

    /// <summary>Quantities in the spelling of the problem: PT where it says PT, not TP.</summary>
    public Items<Symbol> Spelled { get; init; }

    /// <summary>The symbol under the first name of each of its rays, in the spelling of the problem.</summary>
    public Symbol Canonical(Symbol symbol)
    {
        Symbol plain = Plain(symbol);
        foreach (Symbol spelled in Spelled)
            if (spelled == plain) return spelled;
        return plain;
    }

    private Symbol Plain(Symbol symbol) => symbol switch
    {
        Angle a => Unspelled(a),
        Ratio r => new Ratio(r.Function, (Angle)Canonical((Symbol)r.Of)),
        _ => symbol,
    };

    public Angle Canonical(Angle angle) => (Angle)Canonical((Symbol)angle);

    private Angle Unspelled(Angle angle) =>
        angle with { First = OnRay(angle.Vertex, angle.First), Second = OnRay(angle.Vertex, angle.Second) };

    /// <summary>The formula with every angle under its first name.</summary>
    public Expr Canonical(Expr expr) =>
        expr.Substitute(e => e is SymbolUse use ? new SymbolUse(Canonical(use.Symbol)) : null);

    private Point OnRay(Point from, Point through) =>
        Points.FirstOrDefault(p => p == through || SameRay(from, p, through)) ?? through;

    private bool SameRay(Point from, Point first, Point second) => IsRay(from, first, second) || SameOnLine(from, first, second);

    /// <summary>Whether two points are on one ray whatever their order, which no claim says.</summary>
    public bool IsRay(Point from, Point first, Point second) => Rays.Any(r => r.From == from && ((r.First == first && r.Second == second) || (r.First == second && r.Second == first)));

    private bool SameOnLine(Point from, Point first, Point second) => Lines.Any(line => AreOnRay(line, from, first, second));

    /// <summary>Whether two points of a line, in its order, are on the same side of a third.</summary>
    public static bool AreOnRay(Items<Point> line, Point from, Point first, Point second)
    {
        int corner = IndexOf(line, from), i = IndexOf(line, first), j = IndexOf(line, second);
        return corner >= 0 && i >= 0 && j >= 0 && i != corner && j != corner && i < corner == j < corner;
    }

    private static int IndexOf(Items<Point> line, Point point)
    {
        for (int i = 0; i < line.Count; i++)
            if (line[i] == point) return i;
        return -1;
    }
}
