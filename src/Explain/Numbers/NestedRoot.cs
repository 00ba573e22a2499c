using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>Square roots of positive surd sums: plain, taken apart where that is possible, or one outer root.</summary>
internal static class NestedRoot
{
    public static Exact? Of(SurdSum of)
    {
        if (of.Count == 1) return Single(of.Terms.First());
        if (of.Terms.Any(t => t.Pi != 0)) return null;
        return Denested(of) ?? Kept(of);
    }

    private static Exact? Single((Fraction Factor, BigInteger Root, int Pi) term)
    {
        if (term.Pi % 2 != 0) return null;
        if (!term.Root.IsOne) return term.Pi == 0 ? Kept(SurdSum.Sum([term])) : null;
        return Rational(term.Factor) is { } root ? Exact.Bounded(SurdSum.Of(root.Outside, root.Inside, term.Pi / 2)) : null;
    }

    private static (Fraction Outside, BigInteger Inside)? Rational(Fraction value) =>
        Squares.Split(value.Numerator * value.Denominator) is { } split ? (new Fraction(split.Outside, value.Denominator), split.Inside) : null;

    /// <summary>√(a + b√c) = √((a + s)/2) ± √((a − s)/2) where s = √(a² − b²c) is rational.</summary>
    private static Exact? Denested(SurdSum of)
    {
        Fraction a = of.Terms.FirstOrDefault(t => t.Root.IsOne).Factor;
        if (of.Count != 2 || a.IsZero) return null;
        (Fraction b, BigInteger c, int _) = of.Terms.First(t => !t.Root.IsOne);
        if (Squares.Root(a * a - b * b * new Fraction(c)) is not { } s) return null;
        if (Rational((a + s) / 2) is not { } first || Rational((a - s) / 2) is not { } second) return null;
        Fraction sign = b < 0 ? -1 : 1;
        return Exact.Bounded(SurdSum.Sum([(first.Outside, first.Inside, 0), (second.Outside * sign, second.Inside, 0)]));
    }

    /// <summary>rational × √(sum with whole factors that have no square in common): one form for each number.</summary>
    private static Exact? Kept(SurdSum of)
    {
        BigInteger bottom = of.Terms.Aggregate(BigInteger.One, (d, t) => d / BigInteger.GreatestCommonDivisor(d, t.Factor.Denominator) * t.Factor.Denominator);
        SurdSum whole = of.Times(new Fraction(bottom) * new Fraction(bottom));
        BigInteger common = whole.Terms.Aggregate(BigInteger.Zero, (g, t) => BigInteger.GreatestCommonDivisor(g, t.Factor.Numerator));
        if (Squares.Split(common) is not { } split) return null;
        return Exact.Nested(new Fraction(split.Outside, bottom), whole.Times(new Fraction(BigInteger.One, split.Outside * split.Outside)));
    }
}
