using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>Takes squares out of a square root.</summary>
internal static class Squares
{
    private const int GreatestDivisor = 1 << 16;

    private static readonly BigInteger SmallestUnknown = BigInteger.Pow(GreatestDivisor, 3);

    /// <summary>
    /// √value as coefficient × √radicand with a squarefree radicand; null when the number is too long to be taken apart.
    /// Every rational square is recognised, however long.
    /// </summary>
    public static SurdTerm? Surd(Fraction value)
    {
        if (Split(value.Numerator) is not var (top, topRest) || Split(value.Denominator) is not var (bottom, bottomRest))
        {
            return null;
        }

        return new SurdTerm(new Fraction(top, bottom * bottomRest), topRest * bottomRest, 0);
    }

    /// <summary>The rational square root, when there is one.</summary>
    public static Fraction? Root(Fraction value) =>
        Whole.PerfectRoot(value.Numerator) is { } top && Whole.PerfectRoot(value.Denominator) is { } bottom
            ? new Fraction(top, bottom)
            : null;

    /// <summary>value = outside² × inside, with inside squarefree; null when that cannot be found by small divisors.</summary>
    public static (BigInteger Outside, BigInteger Inside)? Split(BigInteger value)
    {
        if (Whole.PerfectRoot(value) is { } whole)
        {
            return (whole, BigInteger.One);
        }

        var (outside, inside, rest) = (BigInteger.One, BigInteger.One, value);
        for (var divisor = 2; divisor < GreatestDivisor && (long)divisor * divisor * divisor <= rest; divisor += divisor == 2 ? 1 : 2)
        {
            TakeOut(divisor, ref outside, ref inside, ref rest);
        }

        // Without a divisor up to its cube root, what is left has at most two prime factors.
        return Whole.PerfectRoot(rest) is { } root ? (outside * root, inside)
            : rest < SmallestUnknown ? (outside, inside * rest)
            : null;
    }

    private static void TakeOut(int divisor, ref BigInteger outside, ref BigInteger inside, ref BigInteger rest)
    {
        for (var count = 1; Divides(divisor, ref rest); count++)
        {
            (outside, inside) = count % 2 == 0 ? (outside * divisor, inside / divisor) : (outside, inside * divisor);
        }
    }

    private static bool Divides(int divisor, ref BigInteger value)
    {
        if (value <= ulong.MaxValue && (ulong)value % (ulong)divisor != 0)
        {
            return false;
        }

        var quotient = BigInteger.DivRem(value, divisor, out var remainder);
        value = remainder.IsZero ? quotient : value;
        return remainder.IsZero;
    }
}
