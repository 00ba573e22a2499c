using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>
/// Decides whether the root of a positive surd sum s without π is itself a surd sum. If it is, s is a rational number times the square of
/// a number of its own field, so with s = x + y√b the norm n² = x² − by² is a square there, and √s = √((x + n)/2) ± √((x − n)/2),
/// where both roots are again surd sums with one root less under them. If any step fails, √s is no surd sum.
/// </summary>
internal static class Denesting
{
    // Products of four roots already make the longest sum that is kept.
    private const int MostRoots = 4;

    public static Denested Root(SurdSum sum)
    {
        if (sum.Rational is { } rational)
        {
            return Squares.Surd(rational) is { } term ? Denested.Is(SurdSum.Of(term)) : Denested.Unknown;
        }

        var roots = Conjugates.Roots(sum);
        var (x, y) = Conjugates.Split(sum, roots[0]);
        if (roots.Count > MostRoots || Conjugates.Norm(x, y, roots[0]) is not { } norm)
        {
            return Denested.Unknown;
        }

        if (norm.Sign() < 0)
        {
            return Denested.Nested;
        }

        var rootOfNorm = RootOfNorm(norm, roots[1..]);
        return rootOfNorm.Sum is { } n ? Halves(sum, x, n) : rootOfNorm;
    }

    // The root must be in the field of the other roots. Over the rationals that is decided for numbers of any length.
    private static Denested RootOfNorm(SurdSum norm, List<BigInteger> others)
    {
        if (others.Count == 0)
        {
            return Squares.Root(norm.Rational!.Value) is { } rational ? Denested.Is(SurdSum.Of(rational)) : Denested.Nested;
        }

        var root = Root(norm);
        return root.Sum is { } n && !Conjugates.IsInField(n, others) ? Denested.Nested : root;
    }

    private static Denested Halves(SurdSum sum, SurdSum x, SurdSum n)
    {
        var half = new Fraction(1, 2);
        if (x + n is not { } twiceUpper || x + -n is not { } twiceLower)
        {
            return Denested.Unknown;
        }

        // Neither is negative: n² is the product of s and its conjugate, and x half their sum.
        var (upper, lower) = (Root(twiceUpper * half), Root(twiceLower * half));
        if (upper.Sum is { } u && lower.Sum is { } l)
        {
            return Verified(sum, u, l);
        }

        return upper.Sum is null ? upper : lower;
    }

    // The upper root is not less than the lower, so neither candidate is negative.
    private static Denested Verified(SurdSum sum, SurdSum upper, SurdSum lower)
    {
        foreach (var candidate in new[] { upper + lower, upper + -lower })
        {
            if (candidate is null || candidate * candidate is not { } square)
            {
                return Denested.Unknown;
            }

            if (square.Equals(sum))
            {
                return Denested.Is(candidate);
            }
        }

        return Denested.Nested;
    }
}
