using System.Globalization;
using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>The shortest decimal that names a double: what somebody typed, or would type.</summary>
internal static class ShortestDecimal
{
    /// <summary>The decimal, exactly.</summary>
    /// <exception cref="ArgumentException">The double is infinite or not a number.</exception>
    public static Fraction Of(double number)
    {
        if (!double.IsFinite(number)) throw new ArgumentException(number.ToString(CultureInfo.InvariantCulture), nameof(number));
        string[] parts = number.ToString("R", CultureInfo.InvariantCulture).Split('E');
        int power = parts.Length == 1 ? 0 : int.Parse(parts[1], CultureInfo.InvariantCulture);
        int point = parts[0].IndexOf('.', StringComparison.Ordinal);
        int places = point < 0 ? 0 : parts[0].Length - point - 1;
        BigInteger digits = BigInteger.Parse(parts[0].Replace(".", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);
        return digits * Decimals.TenTo(power - places);
    }
}
