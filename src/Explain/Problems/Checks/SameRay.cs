namespace Explain;

/// <summary>Which points lie on one ray, as far as the statements of the figure say so.</summary>
internal sealed class SameRay
{
    private readonly Items<Items<Point>> lines;

    public SameRay(Items<FigureStatement> figure) => lines = [.. figure.SelectMany(f => Ordered(f.Says))];

    /// <summary>The angle, named by the first points in order of the alphabet on its rays.</summary>
    public Angle Named(Angle angle) => angle with { First = First(angle.Vertex, angle.First), Second = First(angle.Vertex, angle.Second) };

    private Point First(Point vertex, Point on)
    {
        List<Point> ray = [on];
        for (int i = 0; i < ray.Count; i++)
            foreach (Items<Point> line in lines)
                ray.AddRange(Beside(line, vertex, ray[i]).Where(p => !ray.Contains(p)));
        return ray.MinBy(p => p.Name, StringComparer.Ordinal)!;
    }

    /// <summary>The points of a line on the same side of the vertex as a point on it.</summary>
    private static IEnumerable<Point> Beside(Items<Point> line, Point vertex, Point on)
    {
        int corner = Index(line, vertex), at = Index(line, on);
        return corner < 0 || at < 0 ? [] : at > corner ? line.Skip(corner + 1) : line.Take(corner);
    }

    private static int Index(Items<Point> line, Point point)
    {
        for (int i = 0; i < line.Count; i++)
            if (line[i] == point) return i;
        return -1;
    }

    /// <summary>The points that a statement puts on a line, in order.</summary>
    private static IEnumerable<Items<Point>> Ordered(Statement statement) => statement is not Place place ? [] : (place.Kind, place.Of) switch
    {
        (PlaceKind.InLine, _) => [[.. place.Of.OfType<Point>()]],
        (PlaceKind.Between or PlaceKind.Midpoint, [Point p, Line l]) => [[l.From, p, l.To]],
        (PlaceKind.OnProduced, [Point p, Line l]) => [[l.From, l.To, p]],
        (PlaceKind.Meet, [Line a, Line b, Point p]) => [[a.From, p, a.To], [b.From, p, b.To]],
        _ => [],
    };
}
