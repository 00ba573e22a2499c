using System.Numerics;

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

    public static BigInteger ShiftUp(BigInteger value, int bits) => -(-value >> bits);

    /// <summary>The greatest whole number whose square is at most the value.</summary>
    public static BigInteger Root(BigInteger value)
    {
        if (value.Sign <= 0) return 0;
        BigInteger guess = BigInteger.One << (int)((value.GetBitLength() + 1) / 2);
        while (true)
        {
            BigInteger next = (guess + value / guess) >> 1;
            if (next >= guess) return guess;
            guess = next;
        }
    }

    public static BigInteger RootUp(BigInteger value)
    {
        BigInteger root = Root(value);
        return root * root == value ? root : root + 1;
    }
}
