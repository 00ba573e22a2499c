using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>
/// Sine and its kin with proved digits. Degrees are reduced exactly, by symmetry, to 0°–45°; then a Taylor series with its
/// remainder. Inverses go by the arctangent. Wide enclosures are met by their ends and the extremes between them.
/// </summary>
internal static class Trigonometry
{
    private const int Guard = 32;

    private static readonly Enclosure CommonPi = Machin(4096);

    public static Enclosure Pi(int bits) => bits <= CommonPi.Bits ? Narrow(CommonPi, bits) : Machin(bits);

    private static Enclosure Machin(int bits)
    {
        int working = bits + Guard;
        Enclosure fifth = ArcTanSmall(Enclosure.Of(new Fraction(1, 5), working)), small = ArcTanSmall(Enclosure.Of(new Fraction(1, 239), working));
        return Narrow(Enclosure.Of(16, working) * fifth - Enclosure.Of(4, working) * small, bits);
    }

    public static Enclosure Sin(Fraction degrees, int bits)
    {
        Fraction turned = Modulo(degrees, 360);
        if (turned >= 180) return -Sin(turned - 180, bits);
        if (turned > 90) turned = 180 - turned;
        return Narrow(turned <= 45 ? Series(turned, bits + Guard, odd: true) : Series(90 - turned, bits + Guard, odd: false), bits);
    }

    public static Enclosure Cos(Fraction degrees, int bits) => Sin(degrees + 90, bits);

    public static Enclosure Sin(Enclosure degrees)
    {
        Enclosure ends = Enclosure.Hull(Sin(degrees.Low, degrees.Bits), Sin(degrees.High, degrees.Bits));
        if (Passes(degrees, 90)) ends = Enclosure.Hull(ends, Enclosure.Of(1, degrees.Bits));
        return Passes(degrees, 270) ? Enclosure.Hull(ends, Enclosure.Of(-1, degrees.Bits)) : ends;
    }

    public static Enclosure Cos(Enclosure degrees) => Sin(degrees + Enclosure.Of(90, degrees.Bits));

    /// <summary>The tangent; null when 90° (or 270°) may be among the values.</summary>
    public static Enclosure? Tan(Enclosure degrees)
    {
        if (Passes(degrees, 90) || Passes(degrees, 270)) return null;
        Enclosure? low = Tan(degrees.Low, degrees.Bits), high = Tan(degrees.High, degrees.Bits);
        return low is { } l && high is { } h ? Enclosure.Hull(l, h) : null;
    }

    /// <summary>From −90° to 90°; null when the value may be beyond −1 and 1.</summary>
    public static Enclosure? ArcSin(Enclosure of)
    {
        if (of.Low < -1 || of.High > 1) return null;
        return Enclosure.Hull(ArcSin(of.Low, of.Bits), ArcSin(of.High, of.Bits));
    }

    public static Enclosure? ArcCos(Enclosure of) => ArcSin(of) is { } sine ? Enclosure.Of(90, of.Bits) - sine : null;

    public static Enclosure ArcTan(Enclosure of) => Enclosure.Hull(ArcTan(of.Low, of.Bits), ArcTan(of.High, of.Bits));

    private static Enclosure? Tan(Fraction degrees, int bits) =>
        Enclosure.Divide(Sin(degrees, bits + Guard), Cos(degrees, bits + Guard)) is { } tangent ? Narrow(tangent, bits) : null;

    private static Enclosure ArcSin(Fraction value, int bits)
    {
        if (value == 1 || value == -1) return Enclosure.Of(value * 90, bits);
        int working = 2 * bits + Guard;
        Enclosure cosine = Enclosure.Sqrt(Enclosure.Of(1 - value * value, working))!.Value;
        return Narrow(ArcTanDegrees(Enclosure.Divide(Enclosure.Of(value, working), cosine)!.Value), bits);
    }

    private static Enclosure ArcTan(Fraction value, int bits) => Narrow(ArcTanDegrees(Enclosure.Of(value, bits + Guard)), bits);

    private static Enclosure ArcTanDegrees(Enclosure value)
    {
        Enclosure one = Enclosure.Of(1, value.Bits), reduced = value;
        int halvings = 0;
        for (; halvings < 6; halvings++)
            reduced = Enclosure.Divide(reduced, one + Enclosure.Sqrt(one + Enclosure.Power(reduced, 2))!.Value)!.Value;
        Enclosure radians = ArcTanSmall(reduced) * Enclosure.Of(1 << halvings, value.Bits);
        return Enclosure.Divide(radians * Enclosure.Of(180, value.Bits), Pi(value.Bits))!.Value;
    }

    /// <summary>x − x³/3 + x⁵/5 − …, for |x| well below 1; the first term left out bounds what follows.</summary>
    private static Enclosure ArcTanSmall(Enclosure x)
    {
        Enclosure square = Enclosure.Power(x, 2), power = x, sum = x;
        for (int n = 3; ; n += 2)
        {
            power = -(power * square);
            Enclosure term = Enclosure.Divide(power, Enclosure.Of(n, x.Bits))!.Value;
            if (Tiny(term)) return Widen(sum, term);
            sum += term;
        }
    }

    /// <summary>The sine (odd) or cosine series of an angle from 0° to 45°.</summary>
    private static Enclosure Series(Fraction degrees, int bits, bool odd)
    {
        Enclosure x = Enclosure.Divide(Enclosure.Of(degrees, bits) * Pi(bits), Enclosure.Of(180, bits))!.Value;
        Enclosure square = Enclosure.Power(x, 2), term = odd ? x : Enclosure.Of(1, bits), sum = term;
        for (int n = odd ? 2 : 1; ; n += 2)
        {
            term = -Enclosure.Divide(term * square, Enclosure.Of(n * (n + 1), bits))!.Value;
            if (Tiny(term)) return Widen(sum, term);
            sum += term;
        }
    }

    private static bool Tiny(Enclosure term) => BigInteger.Abs(term.LowUnits) <= 4 && BigInteger.Abs(term.HighUnits) <= 4;

    private static Enclosure Widen(Enclosure sum, Enclosure rest)
    {
        BigInteger most = BigInteger.Max(BigInteger.Abs(rest.LowUnits), BigInteger.Abs(rest.HighUnits)) * 2 + 1;
        return new(sum.LowUnits - most, sum.HighUnits + most, sum.Bits);
    }

    private static Enclosure Narrow(Enclosure wide, int bits) =>
        new(wide.LowUnits >> (wide.Bits - bits), Whole.ShiftUp(wide.HighUnits, wide.Bits - bits), bits);

    private static Fraction Modulo(Fraction value, int modulus) =>
        value - modulus * new Fraction(Whole.FloorDivide(value.Numerator, value.Denominator * modulus));

    /// <summary>Whether an angle of this many degrees, or it and whole turns, is among the values.</summary>
    private static bool Passes(Enclosure degrees, int angle)
    {
        Fraction low = (degrees.Low - angle) / 360, high = (degrees.High - angle) / 360;
        return Whole.CeilingDivide(low.Numerator, low.Denominator) <= Whole.FloorDivide(high.Numerator, high.Denominator);
    }
}
