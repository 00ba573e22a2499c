using Fractions;

namespace Explain;

/// <summary>Where two loci meet.</summary>
internal static class Crossing
{
    /// <summary>Every common point; null where the enclosures do not tell how many there are.</summary>
    public static Items<Vector>? Of(Locus first, Locus second) => (first, second) switch
    {
        (Ray a, Ray b) => Rays(a, b),
        (Ray a, Ring b) => Piercing(a, b),
        (Ring a, Ray b) => Piercing(b, a),
        (Ring a, Ring b) => Rings(a, b),
        _ => null,
    };

    private static Items<Vector>? Rays(Ray a, Ray b)
    {
        Enclosure turn = Vector.Cross(a.Along, b.Along);
        Vector between = b.From - a.From;
        if (Enclosure.Divide(Vector.Cross(between, b.Along), turn) is not { } s || Enclosure.Divide(Vector.Cross(between, a.Along), turn) is not { } t) return null;
        if (Is(a, s) is not { } onFirst || Is(b, t) is not { } onSecond) return null;
        return onFirst && onSecond ? [a.From + a.Along * s] : [];
    }

    /// <summary>Whether a multiple of its direction is a point of a ray other than its start.</summary>
    private static bool? Is(Ray ray, Enclosure times) => ray.BothWays ? true : times.Sign is { } sign ? sign > 0 : null;

    private static Items<Vector>? Piercing(Ray ray, Ring ring)
    {
        if (ray.Along.Length is not { } length || Enclosure.Divide(Enclosure.Of(1, length.Bits), length) is not { } shrink) return null;
        Vector unit = ray.Along * shrink, across = ring.Centre - ray.From;
        Enclosure along = Vector.Dot(across, unit), apart = Vector.Cross(unit, across), rest = Enclosure.Power(ring.Radius, 2) - Enclosure.Power(apart, 2);
        if (rest.Sign < 0) return [];
        if (rest.Sign is null or 0 || Enclosure.Sqrt(rest) is not { } half) return null;
        Enclosure[] times = [along + half, along - half];
        if (times.Any(t => Is(ray, t) is null)) return null;
        return [.. times.Where(t => Is(ray, t) == true).Select(t => ray.From + unit * t)];
    }

    private static Items<Vector>? Rings(Ring a, Ring b)
    {
        Vector between = b.Centre - a.Centre;
        if (between.Length is not { } apart) return null;
        if (Enclosure.Divide(between.Square + Enclosure.Power(a.Radius, 2) - Enclosure.Power(b.Radius, 2), apart * 2) is not { } along) return null;
        Enclosure rest = Enclosure.Power(a.Radius, 2) - Enclosure.Power(along, 2);
        if (rest.Sign < 0) return [];
        if (rest.Sign is null or 0 || Enclosure.Sqrt(rest) is not { } height || Enclosure.Divide(Enclosure.Of(Fraction.One, apart.Bits), apart) is not { } shrink) return null;
        Vector unit = between * shrink, up = new(-unit.Y, unit.X);
        Vector foot = a.Centre + unit * along;
        return [foot + up * height, foot - up * height];
    }
}
