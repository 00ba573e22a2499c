using Fractions;

namespace Explain;

/// <summary>What the givens and the figure tell of lengths, angles and directions, as enclosures.</summary>
internal sealed class Known
{
    private readonly Dictionary<Symbol, Enclosure> values = [];
    private readonly Items<Items<Point>> lines;
    private readonly int bits;

    public Known(Problem problem, Rays rays, int bits)
    {
        (this.bits, lines) = (bits, [.. rays.Lines]);
        foreach (Given given in problem.Given)
            if (given.Value.Symbols().Count == 0 && GivenNumbers.Of(given.Value, bits) is { } value) values.TryAdd(given.Of, value);
        foreach (Corner c in StatedRightAngles.Of(problem))
            values.TryAdd(new Angle(c.First, c.Vertex, c.Second), Enclosure.Of(90, bits));
    }

    /// <summary>The lines of the figure, the points of each in order.</summary>
    public Items<Items<Point>> Lines => lines;

    public Enclosure? Length(Point from, Point to) => values.TryGetValue(new Length(from, to), out Enclosure value) ? value : null;

    /// <summary>The bearing of one point from another, by its own or by the one the other way.</summary>
    public Enclosure? Bearing(Point of, Point from)
    {
        if (values.TryGetValue(new Bearing(of, from), out Enclosure own)) return own;
        return values.TryGetValue(new Bearing(from, of), out Enclosure back) ? back + Enclosure.Of(180, bits) : null;
    }

    /// <summary>The angle between two rays as given, under any of the names of the rays, or from the other angles of the triangle.</summary>
    public Enclosure? Angle(Point first, Point vertex, Point second)
    {
        if (Given(first, vertex, second) is { } given) return given;
        return Given(vertex, first, second) is { } one && Given(vertex, second, first) is { } other ? Enclosure.Of(180, bits) - one - other : null;
    }

    private Enclosure? Given(Point first, Point vertex, Point second)
    {
        foreach ((Symbol symbol, Enclosure value) in values)
        {
            if (symbol is not Angle { Reflex: false } angle || angle.Vertex != vertex) continue;
            foreach ((Point a, Point b) in new[] { (angle.First, angle.Second), (angle.Second, angle.First) })
            {
                if (Turned(vertex, a, first) is not { } at || Turned(vertex, b, second) is not { } to) continue;
                return at == to ? value : Enclosure.Of(180, bits) - value;
            }
        }

        return null;
    }

    /// <summary>False where two points are on one ray, true where they are on opposite rays, null where the figure says neither.</summary>
    public bool? Turned(Point from, Point one, Point other)
    {
        if (one == other) return false;
        foreach (Items<Point> line in lines)
        {
            List<Point> order = [.. line];
            int corner = order.IndexOf(from), i = order.IndexOf(one), j = order.IndexOf(other);
            if (corner >= 0 && i >= 0 && j >= 0) return i < corner != j < corner;
        }

        return null;
    }
}
