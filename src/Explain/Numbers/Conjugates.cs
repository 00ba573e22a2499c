using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>The changes of sign of single roots in a surd sum without π: the way to divide and to undo nested roots.</summary>
internal static class Conjugates
{
    private const int MostRootsInDivisor = 3;

    /// <summary>Numbers without common divisors whose products are all the radicands of the sum.</summary>
    public static List<BigInteger> Roots(SurdSum sum)
    {
        var roots = new List<BigInteger>();
        foreach (var radicand in sum.Terms.Select(t => t.Radicand))
        {
            Refine(roots, radicand);
        }

        return roots;
    }

    /// <summary>The sum as x + y√root.</summary>
    public static (SurdSum X, SurdSum Y) Split(SurdSum sum, BigInteger root)
    {
        var x = sum.Terms.Where(t => !(t.Radicand % root).IsZero);
        var y = sum.Terms.Where(t => (t.Radicand % root).IsZero).Select(t => t with { Radicand = t.Radicand / root });
        return (SurdSum.Of(x)!, SurdSum.Of(y)!);
    }

    /// <summary>Whether all radicands are products of these coprime roots.</summary>
    public static bool IsInField(SurdSum sum, List<BigInteger> roots) => sum.Terms.All(t =>
        roots.Aggregate(t.Radicand, (rest, root) => (rest % root).IsZero ? rest / root : rest).IsOne);

    /// <summary>x² − y² root, which is free of that root; null when it is too long.</summary>
    public static SurdSum? Norm(SurdSum x, SurdSum y, BigInteger root) =>
        x * x is { } square && y * y is { } other ? square + other * new Fraction(-root) : null;

    /// <summary>1 ÷ the sum; null where that has no form as a surd sum, or only one that is too long.</summary>
    public static SurdSum? Inverse(SurdSum divisor)
    {
        var power = divisor.Terms[0].PiPower;
        if (divisor.Terms.Any(t => t.PiPower != power))
        {
            return null;
        }

        return InverseWithoutPi(divisor.TimesPi(-power))?.TimesPi(-power);
    }

    private static SurdSum? InverseWithoutPi(SurdSum divisor)
    {
        var roots = Roots(divisor);
        if (roots.Count > MostRootsInDivisor)
        {
            return null;
        }

        var (inverse, rest) = (SurdSum.Of(Fraction.One), divisor);
        foreach (var root in roots)
        {
            var (x, y) = Split(rest, root);
            var other = (-y * SurdSum.Of(new SurdTerm(Fraction.One, root, 0)))!;
            var conjugate = (x + other)!;
            (inverse, rest) = ((inverse * conjugate)!, Norm(x, y, root)!);
        }

        return inverse * rest.Rational!.Value.Reciprocal();
    }

    private static void Refine(List<BigInteger> roots, BigInteger radicand)
    {
        for (var i = 0; i < roots.Count && !radicand.IsOne; i++)
        {
            var common = BigInteger.GreatestCommonDivisor(roots[i], radicand);
            if (!common.IsOne && common != roots[i])
            {
                roots.Insert(i + 1, roots[i] / common);
                roots[i] = common;
            }

            radicand /= common;
        }

        if (!radicand.IsOne)
        {
            roots.Add(radicand);
        }
    }
}
