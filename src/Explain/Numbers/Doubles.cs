using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>The double nearest to a rational number, halves to even, by whole-number arithmetic alone.</summary>
internal static class Doubles
{
    private const int Mantissa = 53, LeastExponent = -1074;

    public static double Nearest(Fraction value)
    {
        BigInteger top = BigInteger.Abs(value.Numerator), bottom = value.Denominator;
        if (top.IsZero) return 0;
        int shift = Mantissa + 1 - (int)(top.GetBitLength() - bottom.GetBitLength());
        while (true)
        {
            BigInteger scaled = shift >= 0 ? (top << shift) / bottom : top / (bottom << -shift);
            if (scaled.GetBitLength() <= Mantissa && -shift >= LeastExponent) return Rounded(value, top, bottom, shift);
            shift--;
        }
    }

    private static double Rounded(Fraction value, BigInteger top, BigInteger bottom, int shift)
    {
        BigInteger numerator = shift >= 0 ? top << shift : top, denominator = shift >= 0 ? bottom : bottom << -shift;
        BigInteger quotient = BigInteger.DivRem(numerator, denominator, out BigInteger rest);
        int half = (rest * 2).CompareTo(denominator);
        if (half > 0 || (half == 0 && !quotient.IsEven)) quotient++;
        double magnitude = Scale((double)quotient, -shift);
        return value.Numerator.Sign < 0 ? -magnitude : magnitude;
    }

    private static double Scale(double value, int exponent)
    {
        while (exponent > 900) (value, exponent) = (value * PowerOfTwo(900), exponent - 900);
        while (exponent < -900) (value, exponent) = (value * PowerOfTwo(-900), exponent + 900);
        return value * PowerOfTwo(exponent);
    }

    private static double PowerOfTwo(int exponent) => BitConverter.Int64BitsToDouble((long)(exponent + 1023) << 52);
}
