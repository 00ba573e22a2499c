using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>Sine and its kin of degrees: exact reduction to 0°–45°, then a series with its remainder. Wide enclosures are met by their ends and the extremes between.</summary>
internal static class Trigonometry
{
    // Each of at most a few hundred terms is out by at most 2 units of the last working place; 2^16 units are allowed for all of it.
    private const int Guard = 32;

    private static readonly BigInteger Slack = BigInteger.One << 16;

    public static Enclosure Pi(int bits)
    {
        var floor = PiDigits.Floor(bits);
        return new(floor, floor + 1, bits);
    }

    public static Enclosure Sin(Fraction degrees, int bits)
    {
        var turned = Whole.Modulo(degrees, 360);
        var half = turned >= 180 ? turned - 180 : turned;
        var sine = FirstQuadrant(half > 90 ? 180 - half : half, bits);
        return turned >= 180 ? -sine : sine;
    }

    public static Enclosure Cos(Fraction degrees, int bits) => Sin(90 - degrees, bits);

    /// <summary>Null where there is no tangent.</summary>
    public static Enclosure? Tan(Fraction degrees, int bits)
    {
        var half = Whole.Modulo(degrees, 180);
        if (half == 45 || half == 135)
        {
            return Enclosure.Of(half == 45 ? 1 : -1, bits);
        }

        return Enclosure.Divide(Sin(half, bits + Guard), Sin(90 - half, bits + Guard)) is { } quotient ? quotient.At(bits) : null;
    }

    public static Enclosure Sin(Enclosure degrees)
    {
        var ends = Enclosure.Hull(Sin(degrees.Low, degrees.Bits), Sin(degrees.High, degrees.Bits));
        if (HoldsTurn(degrees, 90, 360))
        {
            ends = Enclosure.Hull(ends, Enclosure.Of(1, degrees.Bits));
        }

        return HoldsTurn(degrees, 270, 360) ? Enclosure.Hull(ends, Enclosure.Of(-1, degrees.Bits)) : ends;
    }

    public static Enclosure Cos(Enclosure degrees) => Sin(Enclosure.Of(90, degrees.Bits) - degrees);

    /// <summary>Null when an angle without tangent may be inside.</summary>
    public static Enclosure? Tan(Enclosure degrees) =>
        !HoldsTurn(degrees, 90, 180)
        && Tan(degrees.Low, degrees.Bits) is { } low
        && Tan(degrees.High, degrees.Bits) is { } high
            ? Enclosure.Hull(low, high)
            : null;

    /// <summary>From −90° to 90°; null when the sine may be beyond −1 and 1.</summary>
    public static Enclosure? ArcSin(Enclosure sine) => Arcs.Sine(sine);

    /// <summary>From 0° to 180°; null when the cosine may be beyond −1 and 1.</summary>
    public static Enclosure? ArcCos(Enclosure cosine) => Arcs.Sine(cosine) is { } sine ? Enclosure.Of(90, cosine.Bits) - sine : null;

    /// <summary>Between −90° and 90°.</summary>
    public static Enclosure ArcTan(Enclosure tangent) => Arcs.Tangent(tangent);

    /// <summary>Whether an angle inside is the given one, or that and whole turns.</summary>
    private static bool HoldsTurn(Enclosure degrees, int angle, int turn) =>
        Whole.Ceiling((degrees.Low - angle) / turn) <= Whole.Floor((degrees.High - angle) / turn);

    private static Enclosure FirstQuadrant(Fraction degrees, int bits)
    {
        if (degrees.IsZero || degrees == 90 || degrees == 30)
        {
            return Enclosure.Of(degrees == 30 ? new Fraction(1, 2) : degrees / 90, bits);
        }

        var work = bits + Guard;
        var sine = degrees <= 45
            ? SineSeries(Radians(degrees, work), work)
            : CosineSeries(Radians(90 - degrees, work), work);
        var low = BigInteger.Max(BigInteger.Zero, (sine - Slack) >> Guard);
        var high = BigInteger.Min(BigInteger.One << bits, ((sine + Slack) >> Guard) + 1);
        return new(low, high, bits);
    }

    private static BigInteger Radians(Fraction degrees, int work) =>
        degrees.Numerator * PiDigits.Floor(work) / (180 * degrees.Denominator);

    private static BigInteger SineSeries(BigInteger angle, int work) => Series(angle, angle, 2, work);

    private static BigInteger CosineSeries(BigInteger angle, int work) => Series(BigInteger.One << work, angle, 1, work);

    private static BigInteger Series(BigInteger first, BigInteger angle, int factor, int work)
    {
        var square = (angle * angle) >> work;
        var (sum, term) = (first, first);
        for (; !term.IsZero; factor += 2)
        {
            term = -((term * square) >> work) / (factor * (factor + 1));
            sum += term;
        }

        return sum;
    }
}
