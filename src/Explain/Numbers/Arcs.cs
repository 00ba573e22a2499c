using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>The angle, in degrees, of a sine or a tangent.</summary>
internal static class Arcs
{
    // The argument is halved a few times; the units of the last working place lost on the way are doubled back as often.
    // With the change to degrees less than 2^22 units are lost; 2^24 are allowed.
    private const int Guard = 40;
    private const int Halvings = 5;

    private static readonly BigInteger Slack = BigInteger.One << 24;

    public static Enclosure? Sine(Enclosure sine)
    {
        var one = BigInteger.One << sine.Bits;
        return sine.LowUnits < -one || sine.HighUnits > one
            ? null
            : Monotone(sine, SineAt);
    }

    public static Enclosure Tangent(Enclosure tangent) => Monotone(tangent, TangentAt);

    private static Enclosure Monotone(Enclosure value, Func<BigInteger, int, Enclosure> positive)
    {
        var low = Signed(value.LowUnits, value.Bits, positive);
        return value.IsPoint ? low : Enclosure.Hull(low, Signed(value.HighUnits, value.Bits, positive));
    }

    private static Enclosure Signed(BigInteger numerator, int bits, Func<BigInteger, int, Enclosure> positive) =>
        numerator.Sign < 0 ? -positive(-numerator, bits) : positive(numerator, bits);

    private static Enclosure SineAt(BigInteger sine, int bits)
    {
        var one = BigInteger.One << bits;
        if (sine.IsZero || sine == one || sine << 1 == one)
        {
            return Enclosure.Of(sine == one ? 90 : sine.IsZero ? 0 : 30, bits);
        }

        // arcsin s = 2 arctan(s / (1 + √(1 − s²))), where nothing cancels.
        var work = bits + Guard;
        var whole = BigInteger.One << work;
        var wide = sine << Guard;
        var half = (wide << work) / (whole + Whole.Root(whole * whole - wide * wide));
        return Degrees(Arctangent(half, work) << 1, work, bits);
    }

    private static Enclosure TangentAt(BigInteger tangent, int bits)
    {
        var one = BigInteger.One << bits;
        if (tangent.IsZero || tangent == one)
        {
            return Enclosure.Of(tangent.IsZero ? 0 : 45, bits);
        }

        var work = bits + Guard;
        return tangent < one
            ? Degrees(Arctangent(tangent << Guard, work), work, bits)
            : Enclosure.Of(90, bits) - Degrees(Arctangent((BigInteger.One << (work + bits)) / tangent, work), work, bits);
    }

    /// <summary>The arctangent in radians of a number from 0 to 1.</summary>
    private static BigInteger Arctangent(BigInteger tangent, int work)
    {
        var one = BigInteger.One << work;
        for (var i = 0; i < Halvings; i++)
        {
            tangent = (tangent << work) / (one + Whole.Root(one * one + tangent * tangent));
        }

        var square = (tangent * tangent) >> work;
        var (sum, power) = (tangent, tangent);
        for (var odd = 3; !power.IsZero; odd += 2)
        {
            power = -((power * square) >> work);
            sum += power / odd;
        }

        return sum << Halvings;
    }

    private static Enclosure Degrees(BigInteger radians, int work, int bits)
    {
        var degrees = ((180 * radians) << work) / PiDigits.Floor(work);
        return new(BigInteger.Max(BigInteger.Zero, (degrees - Slack) >> Guard), ((degrees + Slack) >> Guard) + 1, bits);
    }
}
