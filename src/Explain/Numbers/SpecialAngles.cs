using System.Collections.Frozen;
using Fractions;

namespace Explain;

/// <summary>
/// The angles whose sine, cosine and tangent are surd sums or single nested roots. The square of a cosine is (1 + cos 2a)/2, and cos 2a is
/// a surd sum for multiples of 15° and 36° only; so these are the multiples of 7½° and of 18°, for all three functions.
/// </summary>
internal static class SpecialAngles
{
    private static readonly FrozenDictionary<Fraction, Exact> Cosines = Angles()
        .ToFrozenDictionary(a => a, a => Exact.Root(Half(1, CosineOfDouble(a)))!);

    private static readonly FrozenDictionary<Fraction, Exact> Tangents = Angles()
        .Where(a => a != 90)
        .ToFrozenDictionary(a => a, a => Exact.Divide(Cosines[90 - a], Cosines[a])!);

    private static readonly FrozenDictionary<Exact, Fraction> ByCosine = Cosines.ToFrozenDictionary(p => p.Value, p => p.Key);

    private static readonly FrozenDictionary<Exact, Fraction> ByTangent = Tangents.ToFrozenDictionary(p => p.Value, p => p.Key);

    public static Exact? Sin(Fraction degrees) => Cos(90 - degrees);

    public static Exact? Cos(Fraction degrees)
    {
        var turned = Whole.Modulo(degrees, 360);
        var half = turned > 180 ? 360 - turned : turned;
        return half > 90
            ? Cosines.GetValueOrDefault(180 - half)?.Negate()
            : Cosines.GetValueOrDefault(half);
    }

    public static Exact? Tan(Fraction degrees)
    {
        var half = Whole.Modulo(degrees, 180);
        return half > 90
            ? Tangents.GetValueOrDefault(180 - half)?.Negate()
            : Tangents.GetValueOrDefault(half);
    }

    /// <summary>The angle from −90° to 90°; null when it is not special.</summary>
    public static Fraction? ArcSin(Exact sine) => 90 - ArcCos(sine);

    /// <summary>The angle from 0° to 180°; null when it is not special.</summary>
    public static Fraction? ArcCos(Exact cosine) =>
        ByCosine.TryGetValue(cosine, out var acute) ? acute
            : ByCosine.TryGetValue(cosine.Negate(), out var other) ? 180 - other
            : null;

    /// <summary>The angle between −90° and 90°; null when it is not special.</summary>
    public static Fraction? ArcTan(Exact tangent) =>
        ByTangent.TryGetValue(tangent, out var acute) ? acute
            : ByTangent.TryGetValue(tangent.Negate(), out var other) ? -other
            : null;

    private static IEnumerable<Fraction> Angles() =>
        Enumerable.Range(0, 13).Select(i => new Fraction(15 * i, 2))
            .Concat(Enumerable.Range(1, 4).Select(i => new Fraction(18 * i)));

    private static Exact CosineOfDouble(Fraction degrees)
    {
        var twice = (degrees * 2).ToInt32();
        return twice > 90 ? AcuteCosine(180 - twice).Negate() : AcuteCosine(twice);
    }

    private static Exact AcuteCosine(int degrees) => degrees switch
    {
        0 => Exact.One,
        15 => Half(Root(6, 2), Root(2, 2)),
        30 => Root(3, 2),
        36 => Half(Root(5, 2), Exact.Of(new Fraction(1, 2))),
        45 => Root(2, 2),
        60 => Exact.Of(new Fraction(1, 2)),
        72 => Half(Root(5, 2), Exact.Of(new Fraction(-1, 2))),
        75 => Half(Root(6, 2), Root(2, 2).Negate()),
        _ => Exact.Zero,
    };

    private static Exact Half(long first, Exact second) => Half(Exact.Of(first), second);

    private static Exact Half(Exact first, Exact second) => Exact.Divide(Exact.Add(first, second)!, Exact.Of(2))!;

    private static Exact Root(long radicand, long divisor) =>
        Exact.Divide(Exact.Root(Exact.Of(radicand))!, Exact.Of(divisor))!;
}
