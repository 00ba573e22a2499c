using Fractions;

namespace Explain;

/// <summary>Numbers in several units at once: 56.9 in as 4 ft 8.9 in.</summary>
internal static class MixedUnits
{
    /// <summary>A number of the last unit as whole numbers of the others, biggest first, and what is left; none of a unit of which there is nothing to begin with.</summary>
    public static Items<(Fraction Number, Unit Unit)> Split(Fraction number, Items<Unit> units)
    {
        List<(Fraction, Unit)> parts = [];
        Fraction left = number;
        for (int i = 0; i < units.Count - 1; i++)
        {
            Fraction one = units[i].FactorTo(units[^1]), whole = new(Whole.FloorDivide(left.Numerator * one.Denominator, left.Denominator * one.Numerator));
            left -= whole * one;
            if (!whole.IsZero || parts.Count > 0) parts.Add((whole, units[i]));
        }

        return [.. parts, (left, units[^1])];
    }
}
