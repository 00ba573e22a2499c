using System.Globalization;
using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>Decimals that end: which numbers they are, how they are written, and which may hide in an enclosure.</summary>
internal static class Decimals
{
    public static BigInteger Ten(int power) => BigInteger.Pow(10, power);

    /// <summary>A power of ten, negative powers too.</summary>
    public static Fraction TenTo(int power) => power >= 0 ? new Fraction(Ten(power)) : new Fraction(BigInteger.One, Ten(-power));

    /// <summary>The decimal with the fewest places, and at most this many, inside an enclosure; null when there is none.</summary>
    public static Fraction? CandidateIn(Enclosure enclosure, int places) => LeastIn(enclosure, places) is null
        ? null
        : Enumerable.Range(0, places + 1).Select(p => LeastIn(enclosure, p)).First(c => c is not null);

    /// <summary>How many places a decimal needs; null when it never ends.</summary>
    public static int? PlacesOf(Fraction value)
    {
        BigInteger rest = value.Reduce().Denominator;
        int twos = Count(ref rest, 2), fives = Count(ref rest, 5);
        return rest.IsOne ? int.Max(twos, fives) : null;
    }

    /// <summary>A decimal that ends, in full; null when it does not end.</summary>
    public static string? InFull(Fraction value) => PlacesOf(value) is { } places ? Write(value, places) : null;

    /// <summary>Writes a whole multiple of 10^−places with that many decimals.</summary>
    public static string Write(Fraction value, int places) => Write((value * TenTo(places)).ToBigInteger(), places);

    /// <summary>Writes a whole number of units of a decimal place, with a point and U+2212 for a minus; places may be negative.</summary>
    public static string Write(BigInteger units, int places)
    {
        if (places < 0) return Write(units * Ten(-places), 0);
        string digits = BigInteger.Abs(units).ToString(CultureInfo.InvariantCulture).PadLeft(places + 1, '0');
        string text = places == 0 ? digits : $"{digits[..^places]}.{digits[^places..]}";
        return units.Sign < 0 ? "−" + text : text;
    }

    /// <summary>The number that digits with a point say; a minus is U+2212.</summary>
    public static Fraction Read(string digits) => Fraction.FromString(digits.Replace('−', '-'), System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>How many digits stand behind the point.</summary>
    public static int PlacesIn(string digits) => digits.IndexOf('.', StringComparison.Ordinal) is >= 0 and var point ? digits.Length - point - 1 : 0;

    private static Fraction? LeastIn(Enclosure enclosure, int places)
    {
        BigInteger scale = Ten(places), least = Whole.Ceiling(enclosure.Low * scale);
        return least <= Whole.Floor(enclosure.High * scale) ? new Fraction(least, scale) : null;
    }

    private static int Count(ref BigInteger value, int factor)
    {
        int count = 0;
        for (; (value % factor).IsZero; count++) value /= factor;
        return count;
    }
}
