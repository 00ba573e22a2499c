using Fractions;

namespace Explain;

/// <summary>Points that other points fix.</summary>
internal static class Projecting
{
    public static Vector? Foot(Point from, Line to, Func<Point, Vector?> find)
    {
        if (find(from) is not { } t || find(to.From) is not { } p || find(to.To) is not { } q) return null;
        Vector along = q - p;
        return Enclosure.Divide(Vector.Dot(t - p, along), along.Square) is { } share ? p + along * share : null;
    }

    public static Vector? Middle(Line of, Func<Point, Vector?> find)
    {
        if (find(of.From) is not { } p || find(of.To) is not { } q) return null;
        return p + (q - p) * Enclosure.Of(new Fraction(1, 2), p.X.Bits);
    }
}
