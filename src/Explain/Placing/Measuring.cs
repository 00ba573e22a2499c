using Fractions;

namespace Explain;

/// <summary>Measures a figure in coordinates by scalar and vector products.</summary>
internal static class Measuring
{
    public static Enclosure? Of(Symbol symbol, Func<Point, Vector?> find) => symbol switch
    {
        Length l => Between(l.From, l.To, find)?.Length,
        Angle a => AngleOf(a, find),
        Ratio r => RatioOf(r, find),
        DistanceToLine d => Distance(d, find),
        Bearing b => Compass(b, find),
        Measure { Kind: MeasureKind.Area } m => Area(m.Of, find),
        Measure { Kind: MeasureKind.Perimeter } m => Perimeter(m.Of, find),
        Measure { Kind: MeasureKind.HalfPerimeter } m => Perimeter(m.Of, find) * new Fraction(1, 2),
        Measure { Kind: MeasureKind.InscribedRadius } m => Circles.Inscribed(m.Of, find),
        Measure { Kind: MeasureKind.CircumscribedRadius } m => Circles.Circumscribed(m.Of, find),
        Measure { Kind: MeasureKind.CircumscribedDiameter } m => Circles.Circumscribed(m.Of, find) * new Fraction(2),
        _ => null,
    };

    private static Vector? Between(Point from, Point to, Func<Point, Vector?> find) =>
        find(from) is { } start && find(to) is { } end ? end - start : null;

    private static (Enclosure Cosine, Enclosure Sine)? Turn(Angle angle, Func<Point, Vector?> find)
    {
        if (Between(angle.Vertex, angle.First, find) is not { } u || Between(angle.Vertex, angle.Second, find) is not { } v) return null;
        if (u.Length is not { } first || v.Length is not { } second) return null;
        Enclosure both = first * second;
        return (Enclosure.Divide(Vector.Dot(u, v), both)!.Value, Enclosure.Divide(Positive(Vector.Cross(u, v)), both)!.Value);
    }

    private static Enclosure? AngleOf(Angle angle, Func<Point, Vector?> find)
    {
        if (Turn(angle, find) is not var (cosine, _) || Trigonometry.ArcCos(Inside(cosine)) is not { } degrees) return null;
        return angle.Reflex ? Enclosure.Of(360, degrees.Bits) - degrees : degrees;
    }

    /// <summary>Clockwise from north, north being up; due north is 0°.</summary>
    private static Enclosure? Compass(Bearing bearing, Func<Point, Vector?> find)
    {
        if (Between(bearing.From, bearing.Of, find) is not { } along || along.Length is not { } length || Enclosure.Divide(along.Y, length) is not { } cosine) return null;
        if (Trigonometry.ArcCos(Inside(cosine)) is not { } degrees) return null;
        return along.X.Sign switch
        {
            < 0 => Enclosure.Of(360, degrees.Bits) - degrees,
            null when along.Y.Sign > 0 => Enclosure.Hull(-degrees, degrees),
            _ => degrees,
        };
    }

    private static Enclosure? RatioOf(Ratio ratio, Func<Point, Vector?> find) => Turn(ratio.Of, find) is not var (cosine, sine) ? null : ratio.Function switch
    {
        Function.Sine => sine,
        Function.Cosine => cosine,
        Function.Tangent => Enclosure.Divide(sine, cosine),
        _ => null,
    };

    private static Enclosure? Distance(DistanceToLine distance, Func<Point, Vector?> find)
    {
        if (Between(distance.To.From, distance.To.To, find) is not { } along || Between(distance.To.From, distance.From, find) is not { } across) return null;
        return along.Length is { } length ? Enclosure.Divide(Positive(Vector.Cross(along, across)), length) : null;
    }

    private static Enclosure? Area(Polygon polygon, Func<Point, Vector?> find)
    {
        Vector?[] corners = [.. polygon.Corners.Select(find)];
        if (corners.Length < 3 || corners.Any(c => c is null)) return null;
        Enclosure twice = Vector.Cross(corners[^1]!.Value, corners[0]!.Value);
        for (int i = 0; i + 1 < corners.Length; i++) twice += Vector.Cross(corners[i]!.Value, corners[i + 1]!.Value);
        return Positive(twice) * new Fraction(1, 2);
    }

    private static Enclosure? Perimeter(Polygon polygon, Func<Point, Vector?> find)
    {
        Enclosure? sum = null;
        foreach (Length side in TriangleParts.Sides(polygon))
        {
            if (Between(side.From, side.To, find)?.Length is not { } length) return null;
            sum = sum is { } soFar ? soFar + length : length;
        }

        return sum;
    }

    private static Enclosure Positive(Enclosure value) => value.Sign < 0 ? -value
        : value.Sign is null && value.Low.IsNegative ? Enclosure.Between(Fraction.Zero, -value.Low > value.High ? -value.Low : value.High, value.Bits) : value;

    private static Enclosure Inside(Enclosure cosine) =>
        Enclosure.Between(cosine.Low < -1 ? Fraction.MinusOne : cosine.Low, cosine.High > 1 ? Fraction.One : cosine.High, cosine.Bits);
}
