namespace Explain;

/// <summary>The two circles of a triangle in coordinates: centres are where lines cross, radii are distances from them.</summary>
internal static class Circles
{
    /// <summary>The bisectors of two angles cross in the centre, which is one radius away from a side.</summary>
    public static Enclosure? Inscribed(Polygon triangle, Func<Point, Vector?> find)
    {
        if (Corners(triangle, find) is not var (a, b, c) || Unit(b - a) is not { } ab || Unit(c - a) is not { } ac || Unit(c - b) is not { } bc) return null;
        Vector fromA = ab + ac, fromB = bc - ab;
        if (Enclosure.Divide(Vector.Cross(b - a, fromB), Vector.Cross(fromA, fromB)) is not { } share) return null;
        Enclosure away = Vector.Cross(ab, fromA * share);
        return away.Sign < 0 ? -away : away;
    }

    /// <summary>The perpendicular bisectors of two sides cross in the centre, which is one radius away from a corner.</summary>
    public static Enclosure? Circumscribed(Polygon triangle, Func<Point, Vector?> find)
    {
        if (Corners(triangle, find) is not var (a, b, c)) return null;
        Vector u = b - a, v = c - a, across = new Vector(v.Y, -v.X) * u.Square - new Vector(u.Y, -u.X) * v.Square;
        return Enclosure.Divide(Enclosure.Of(1, across.X.Bits), Vector.Cross(u, v) * 2) is { } share ? (across * share).Length : null;
    }

    private static (Vector, Vector, Vector)? Corners(Polygon polygon, Func<Point, Vector?> find) =>
        polygon.Corners is [var a, var b, var c] && find(a) is { } first && find(b) is { } second && find(c) is { } third ? (first, second, third) : null;

    private static Vector? Unit(Vector of) => of.Length is { } length && Enclosure.Divide(Enclosure.Of(1, length.Bits), length) is { } share ? of * share : null;
}
