using System.Globalization;

namespace Explain.Generators;

/// <summary>Numbers as C# writes them.</summary>
internal static class Number
{
    public static string Plain(long number) => number.ToString(CultureInfo.InvariantCulture) + (number is > int.MaxValue or < int.MinValue ? "L" : "");

    /// <summary>A literal as a fraction, exactly; null when it needs more than eighteen digits.</summary>
    public static NumberNode? Parse(string literal)
    {
        string text = literal.Replace("_", "").TrimEnd('d', 'D');
        if (!decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out decimal value)) return null;
        long denominator = 1;
        while (value != decimal.Truncate(value))
        {
            if (denominator >= 1_000_000_000_000_000_000) return null;
            (value, denominator) = (value * 10, denominator * 10);
        }

        return Math.Abs(value) < 1_000_000_000_000_000_000 ? new((long)value, denominator, UnitModel.None) : null;
    }
}
