using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>Square parts and prime factors of whole numbers, by trial up to a limit.</summary>
internal static class Squares
{
    private const int Limit = 100_000;

    /// <summary>The least prime factor of a number of 2 or more; 0 for 1.</summary>
    public static BigInteger Factor(BigInteger value)
    {
        if (value <= 1) return 0;
        for (int p = 2; p <= Limit && p * (long)p <= value; p++)
            if ((value % p).IsZero) return p;
        return value;
    }

    /// <summary>Writes a positive number as outside² × inside with a squarefree inside; null when it is too large to tell.</summary>
    public static (BigInteger Outside, BigInteger Inside)? Split(BigInteger value)
    {
        BigInteger outside = 1, inside = 1;
        for (int p = 2; p <= Limit && p * (BigInteger)p <= value; p++)
        {
            int count = 0;
            for (; (value % p).IsZero; count++) value /= p;
            outside *= BigInteger.Pow(p, count / 2);
            if (count % 2 == 1) inside *= p;
        }

        BigInteger root = Whole.Root(value);
        if (root * root == value) return (outside * root, inside);
        return value < (BigInteger)Limit * Limit * Limit ? (outside, inside * value) : null;
    }

    /// <summary>The root of a rational number that is a square; null of any other.</summary>
    public static Fraction? Root(Fraction value)
    {
        if (value < 0) return null;
        BigInteger top = Whole.Root(value.Numerator), bottom = Whole.Root(value.Denominator);
        return top * top == value.Numerator && bottom * bottom == value.Denominator ? new Fraction(top, bottom) : null;
    }
}
