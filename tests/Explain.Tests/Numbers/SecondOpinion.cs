using System.Numerics;
using Fractions;

namespace Explain.Tests.Numbers;

/// <summary>
/// The second implementation: plain fixed point with 400 bits, no enclosures, other series than the library:
/// sine by halving the angle and doubling back, arctangent by Newton's method, π by the arithmetic-geometric mean.
/// </summary>
internal static class SecondOpinion
{
    public const int Bits = 400;

    /// <summary>What rounding may have cost here; far less than one unit of a library enclosure at 192 bits.</summary>
    public static readonly Fraction Error = new(BigInteger.One, BigInteger.One << 250);

    private const int Halvings = 40;

    private static readonly BigInteger One = BigInteger.One << Bits;

    public static readonly BigInteger Pi = ArithmeticGeometricPi();

    public static BigInteger Of(Fraction value) => (value.Numerator << Bits) / value.Denominator;

    public static Fraction ToFraction(BigInteger value) => new(value, One);

    public static BigInteger Times(BigInteger a, BigInteger b) => (a * b) >> Bits;

    public static BigInteger Over(BigInteger a, BigInteger b) => (a << Bits) / b;

    public static BigInteger Root(BigInteger a)
    {
        a = Snapped(a, 0);

        // Bit by bit: slow and plain.
        BigInteger square = a << Bits, root = 0;
        for (int bit = (int)(square.GetBitLength() / 2); bit >= 0; bit--)
        {
            BigInteger next = root | (BigInteger.One << bit);
            if (next * next <= square) root = next;
        }

        return root;
    }

    public static BigInteger Sine(BigInteger degrees) => SineAndVersine(degrees).Sine;

    public static BigInteger Cosine(BigInteger degrees) => One - SineAndVersine(degrees).Versine;

    public static BigInteger Tangent(BigInteger degrees) => Over(Sine(degrees), Cosine(degrees));

    /// <summary>Newton: the angle is out by the arctangent of (sin − t cos)/(cos + t sin), nearly that itself.</summary>
    public static BigInteger ArcTangent(BigInteger tangent)
    {
        double first = Math.Atan(Math.Clamp(Rough(tangent), -1e15, 1e15)) * 180 / Math.PI;
        BigInteger degrees = Of(Fraction.FromDouble(first));
        for (int i = 0; i < 6; i++)
        {
            (BigInteger sine, BigInteger cosine) = (Sine(degrees), Cosine(degrees));
            BigInteger wrong = Over(sine - Times(tangent, cosine), cosine + Times(tangent, sine));
            degrees -= Over(wrong * 180, Pi);
        }

        return degrees;
    }

    public static BigInteger ArcSine(BigInteger sine)
    {
        sine = Snapped(Snapped(sine, One), -One);
        return BigInteger.Abs(sine) == One ? sine * 90 : ArcTangent(Over(sine, Root((One + sine) * (One - sine) >> Bits)));
    }

    /// <summary>Where a root is steep, the rounding of what is exactly 0 or 1 must not be taken for a number beside it.</summary>
    private static BigInteger Snapped(BigInteger value, BigInteger to) => BigInteger.Abs(value - to) < BigInteger.One << (Bits - 300) ? to : value;

    private static (BigInteger Sine, BigInteger Versine) SineAndVersine(BigInteger degrees)
    {
        // 1 − cos keeps its figures through the doublings; cos itself would not.
        int extra = 3 * Halvings;
        BigInteger wide = (degrees * Pi << extra) / (180 * One) >> Halvings, one = One << extra;
        BigInteger square = wide * wide / one, sine = 0, versine = 0, term = wide;
        for (int n = 1; !term.IsZero; n += 2)
        {
            sine += term;
            term = -(term * square / one) / ((n + 1) * (n + 2));
        }

        term = square / 2;
        for (int n = 2; !term.IsZero; n += 2)
        {
            versine += term;
            term = -(term * square / one) / ((n + 1) * (n + 2));
        }

        for (int i = 0; i < Halvings; i++) (sine, versine) = (2 * (sine * (one - versine)) / one, 2 * (sine * sine) / one);
        return (sine >> extra, versine >> extra);
    }

    private static BigInteger ArithmeticGeometricPi()
    {
        BigInteger a = One, b = Over(One, Root(2 * One)), t = One >> 2, p = One;
        for (int i = 0; i < 12; i++)
        {
            BigInteger next = (a + b) >> 1, half = a - next;
            b = Root(Times(a, b));
            t -= Times(p, Times(half, half));
            (a, p) = (next, p << 1);
        }

        BigInteger sum = a + b;
        return Over(Times(sum, sum), 4 * t);
    }

    private static double Rough(BigInteger value) => (double)(value >> (Bits - 200)) / (double)(BigInteger.One << 200);
}
