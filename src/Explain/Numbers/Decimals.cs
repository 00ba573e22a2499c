using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>Decimals of a fixed number of places, as whole numbers of the last place.</summary>
internal static class Decimals
{
    public static BigInteger Ten(int power) => BigInteger.Pow(10, power);

    /// <summary>The multiple of 10^−places at or below a value.</summary>
    public static BigInteger Floor(Fraction value, int places) => Whole.FloorDivide(value.Numerator * Ten(places), value.Denominator);

    public static BigInteger Ceiling(Fraction value, int places) => -Floor(-value, places);

    /// <summary>Halves away from zero.</summary>
    public static BigInteger Round(Fraction value, int places) =>
        value < 0 ? -Floor(-value + new Fraction(1, 2 * Ten(places), true), places) : Floor(value + new Fraction(1, 2 * Ten(places), true), places);

    /// <summary>The decimal of at most so many places inside an enclosure; null when there is none.</summary>
    public static Fraction? CandidateIn(Enclosure enclosure, int places)
    {
        BigInteger least = Ceiling(enclosure.Low, places);
        return least <= Floor(enclosure.High, places) ? new Fraction(least, Ten(places), true) : null;
    }

    /// <summary>How many places a decimal needs; null when it never ends.</summary>
    public static int? PlacesOf(Fraction value)
    {
        BigInteger rest = value.Denominator;
        int twos = Count(ref rest, 2), fives = Count(ref rest, 5);
        return rest.IsOne ? (twos > fives ? twos : fives) : null;
    }

    /// <summary>Writes a whole number of units of the last place, with a point and U+2212 for a minus.</summary>
    public static string Write(BigInteger units, int places)
    {
        string digits = BigInteger.Abs(units).ToString(System.Globalization.CultureInfo.InvariantCulture).PadLeft(places + 1, '0');
        string text = places == 0 ? digits : $"{digits[..^places]}.{digits[^places..]}";
        return units.Sign < 0 ? "−" + text : text;
    }

    private static int Count(ref BigInteger value, int factor)
    {
        int count = 0;
        for (; (value % factor).IsZero; count++) value /= factor;
        return count;
    }
}
