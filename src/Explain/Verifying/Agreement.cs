using Fractions;

namespace Explain;

/// <summary>When two enclosures may be called one value.</summary>
internal static class Agreement
{
    public static readonly Fraction Tolerance = Fraction.Pow(10, -40);

    /// <summary>They overlap, and both lie within a 10⁻⁴⁰th of their size; of 1 where one of them is 0 itself.</summary>
    public static bool Of(Enclosure first, Enclosure second)
    {
        Fraction size = first.Middle.Abs();
        return first.Overlaps(second) && Enclosure.Hull(first, second).Width <= Tolerance * (first.Sign == 0 || second.Sign == 0 || size.IsZero ? Fraction.One : size);
    }

    /// <summary>A closed formula in metres and degrees; null when it has no value.</summary>
    public static Enclosure? Number(Expr closed, int bits)
    {
        try
        {
            return GivenNumbers.Of(closed, bits);
        }
        catch (ArgumentException)
        {
            // The units of a faulty formula do not fit together: it has no value.
            return null;
        }
    }
}
