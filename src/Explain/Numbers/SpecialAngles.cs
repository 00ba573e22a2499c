using Fractions;

namespace Explain;

/// <summary>Sine, cosine and tangent of the angles whose values are sums of roots or one nested root.</summary>
internal static class SpecialAngles
{
    /// <summary>Sines from 0° to 90°, built from 30°, 45°, 18° and their halves.</summary>
    private static readonly Dictionary<Fraction, Exact> Sines = new()
    {
        [0] = Exact.Zero,
        [15] = Sum((1, 6), (-1, 2)).Over(4),
        [18] = Sum((1, 5), (-1, 1)).Over(4),
        [new Fraction(45, 2)] = Root((2, 1), (-1, 2)).Over(2),
        [30] = Exact.Of(new Fraction(1, 2)),
        [36] = Root((10, 1), (-2, 5)).Over(4),
        [45] = Sum((1, 2)).Over(2),
        [54] = Sum((1, 5), (1, 1)).Over(4),
        [60] = Sum((1, 3)).Over(2),
        [new Fraction(135, 2)] = Root((2, 1), (1, 2)).Over(2),
        [72] = Root((10, 1), (2, 5)).Over(4),
        [75] = Sum((1, 6), (1, 2)).Over(4),
        [90] = Exact.One,
    };

    /// <summary>Tangents that are simpler than sine over cosine.</summary>
    private static readonly Dictionary<Fraction, Exact> Tangents = new()
    {
        [new Fraction(15, 2)] = Sum((1, 6), (-1, 3), (1, 2), (-2, 1)),
        [new Fraction(45, 2)] = Sum((1, 2), (-1, 1)),
        [new Fraction(75, 2)] = Sum((1, 6), (1, 3), (-1, 2), (-2, 1)),
        [new Fraction(105, 2)] = Sum((1, 6), (-1, 3), (-1, 2), (2, 1)),
        [new Fraction(135, 2)] = Sum((1, 2), (1, 1)),
        [new Fraction(165, 2)] = Sum((1, 6), (1, 3), (1, 2), (2, 1)),
        [18] = Root((25, 1), (-10, 5)).Over(5),
        [36] = Root((5, 1), (-2, 5)),
        [54] = Root((25, 1), (10, 5)).Over(5),
        [72] = Root((5, 1), (2, 5)),
    };

    public static Exact? Sin(Fraction degrees)
    {
        Fraction turned = Modulo(degrees, 360);
        if (turned >= 180) return Sin(turned - 180)?.Negate();
        return Sines.GetValueOrDefault(turned > 90 ? 180 - turned : turned);
    }

    public static Exact? Cos(Fraction degrees) => Sin(degrees + 90);

    public static Exact? Tan(Fraction degrees)
    {
        Fraction turned = Modulo(degrees, 180);
        if (turned > 90) return Tan(180 - turned)?.Negate();
        if (Tangents.TryGetValue(turned, out Exact? tangent)) return tangent;
        return Sin(turned) is { } sine && Cos(turned) is { } cosine ? Exact.Divide(sine, cosine) : null;
    }

    /// <summary>The angle from −90° to 90° with this sine; null when it is not one of the table.</summary>
    public static Fraction? ArcSin(Exact sine) => sine.Sign < 0 ? -ArcSin(sine.Negate())
        : Sines.Where(s => s.Value == sine).Select(s => (Fraction?)s.Key).FirstOrDefault();

    /// <summary>The angle from 0° to 180° with this cosine; null when it is not one of the table.</summary>
    public static Fraction? ArcCos(Exact cosine) => 90 - ArcSin(cosine);

    /// <summary>The angle between −90° and 90° with this tangent; null when it is not one of the table.</summary>
    public static Fraction? ArcTan(Exact tangent) => tangent.Sign < 0 ? -ArcTan(tangent.Negate())
        : Sines.Keys.Concat(Tangents.Keys).Where(d => d < 90 && Tan(d) == tangent).Select(d => (Fraction?)d).FirstOrDefault();

    private static Exact Sum(params (int Factor, int Root)[] terms) =>
        Exact.Bounded(SurdSum.Sum(terms.Select(t => (new Fraction(t.Factor), new System.Numerics.BigInteger(t.Root), 0))))!;

    private static Exact Root(params (int Factor, int Root)[] terms) => Exact.Root(Sum(terms))!;

    private static Exact Over(this Exact exact, int divisor) => Exact.Multiply(exact, Exact.Of(new Fraction(1, divisor)))!;

    private static Fraction Modulo(Fraction value, int modulus) =>
        value - modulus * new Fraction(Whole.FloorDivide(value.Numerator, value.Denominator * modulus));
}
