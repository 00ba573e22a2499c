using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>Whole numbers rounded down and up.</summary>
internal static class Whole
{
    public static BigInteger FloorDivide(BigInteger value, BigInteger by)
    {
        BigInteger quotient = BigInteger.DivRem(value, by, out BigInteger rest);
        return rest.IsZero || rest.Sign == by.Sign ? quotient : quotient - 1;
    }

    public static BigInteger CeilingDivide(BigInteger value, BigInteger by) => -FloorDivide(-value, by);

    public static BigInteger Floor(Fraction value) => FloorDivide(value.Numerator, value.Denominator);

    public static BigInteger Ceiling(Fraction value) => CeilingDivide(value.Numerator, value.Denominator);

    /// <summary>The remainder of a division by a positive whole number: from 0 up to that number.</summary>
    public static Fraction Modulo(Fraction value, int modulus) => value - modulus * new Fraction(Floor(value / modulus));

    public static BigInteger ShiftUp(BigInteger value, int bits) => -(-value >> bits);

    /// <summary>The greatest whole number whose square is at most the value.</summary>
    public static BigInteger Root(BigInteger value)
    {
        if (value.Sign <= 0) return 0;
        BigInteger guess = Estimate(value);
        while (true)
        {
            BigInteger next = (guess + value / guess) >> 1;
            if (next >= guess) return guess;
            guess = next;
        }
    }

    /// <summary>The square root, when it is whole.</summary>
    public static BigInteger? PerfectRoot(BigInteger value)
    {
        BigInteger root = Root(value);
        return root * root == value ? root : null;
    }

    public static BigInteger RootUp(BigInteger value)
    {
        BigInteger root = Root(value);
        return root * root == value ? root : root + 1;
    }

    // Newton's method falls to the root only from above, so the estimate must not be too small.
    private static BigInteger Estimate(BigInteger value)
    {
        int shift = (int)long.Max(0, value.GetBitLength() - 52);
        shift += shift & 1;
        return new BigInteger(double.Sqrt((ulong)(value >> shift)) + 2) << (shift / 2);
    }
}
