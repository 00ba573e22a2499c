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
    public static Enclosure? Number(Expr closed, int bits) => Unless(() => GivenNumbers.Of(closed, bits));

    /// <summary>The sign of a difference of closed formulas; null when it cannot be decided or they are not of one kind.</summary>
    public static int? Compare(Expr first, Expr second) => Unless(() => Evaluator.Compare(first, second));

    /// <summary>A result; none where the units of a faulty formula do not fit together.</summary>
    private static T? Unless<T>(Func<T?> result)
    {
        try
        {
            return result();
        }
        catch (ArgumentException)
        {
            return default;
        }
    }
}
