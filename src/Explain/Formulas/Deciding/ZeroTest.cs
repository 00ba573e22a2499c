using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>
/// Decides the sign of a formula that is so near to 0 that it may be 0: first by algebra whether it is 0, and if it is not,
/// by enclosures narrow enough. An angle of less than 180° is 0 when its sine is.
/// </summary>
internal static class ZeroTest
{
    private const int MostBits = 24_576;
    private const int MostSteps = 100_000;

    /// <summary>Null when undecided.</summary>
    public static int? Sign(Expr expr, Reckoner reckoner)
    {
        AlgebraicForm form = new(reckoner);
        Expr? algebraic = form.Of(expr) ?? SineOf(expr, form, reckoner);
        bool? isZero = algebraic is null ? null : IsZero(reckoner.KeepAll(algebraic));
        if (isZero == true) return 0;
        int most = isZero == false ? MostBits : Enclosure.Ladder[^1];
        for (int bits = Enclosure.Ladder[0]; bits <= most; bits *= 2)
            if (reckoner.Enclose(expr, bits)?.Sign is { } sign) return sign;
        return null;
    }

    private static Expr? SineOf(Expr expr, AlgebraicForm form, Reckoner reckoner)
    {
        if (AngleSum.Of(expr, reckoner) is not { } angle || reckoner.Enclose(expr, Enclosure.Ladder[0]) is not { } near) return null;
        BigInteger whole = LeastMultiple(angle.Terms.Select(t => t.Value.Reduce().Denominator));
        return near.High * whole < 180 && near.Low * whole > -180 ? form.SineOf(angle.Times(whole)) : null;
    }

    private static bool? IsZero(Expr algebraic)
    {
        BigInteger steps = LeastMultiple(algebraic.Subtrees().OfType<Apply>().Select(a => ((Quantity)a.To).Amount.Rational!.Value.Reduce().Denominator));
        if (steps > MostSteps) return null;
        CosineTable table = new((int)steps);
        return new CosineForm(table).Of(algebraic) is { } ratio ? IsZero(ratio.Top, table) : null;
    }

    // p + q√r is 0 only if (p + q√r)(p − q√r) = p² − q²r is, which has one root less. Then it is 0 when the other factor is not.
    private static bool? IsZero(CosineSum sum, CosineTable table)
    {
        if (sum.IsEmpty) return true;
        if (Nonzero(sum, table, Enclosure.Ladder[0])) return false;
        if (sum.Roots == 0) return AllZero(sum);
        int root = 1 << int.Log2(sum.Roots);
        (CosineSum q, CosineSum p) = sum.Split(root);
        if (table.Times(p, p) is not { } square || table.Times(q, q) is not { } other || table.Times(other, table.Square(root)) is not { } product) return null;
        return IsZero(square + -product, table) is not true and var known ? known : WhichIsZero(sum, p, q, table);
    }

    // One factor or both are 0. Both are only if p and q are.
    private static bool? WhichIsZero(CosineSum sum, CosineSum p, CosineSum q, CosineTable table)
    {
        CosineSum other = p + p + -sum;
        foreach (int bits in Enclosure.Ladder)
        {
            if (Nonzero(other, table, bits)) return true;
            if (Nonzero(sum, table, bits)) return false;
        }

        return IsZero(p, table) is true && IsZero(q, table) is true ? true : null;
    }

    private static bool? AllZero(CosineSum sum)
    {
        // π is transcendental: each of its powers stands alone.
        bool?[] powers = [.. sum.Parts.GroupBy(p => p.Term.PiPower).Select(g => RootsOfUnity.IsZero(g.Select(p => (new Fraction(p.Term.Angle, sum.Steps), new Fraction(p.Times)))))];
        return powers.Contains(false) ? false : powers.Contains(null) ? null : true;
    }

    private static bool Nonzero(CosineSum sum, CosineTable table, int bits) => table.Enclose(sum, bits).Sign is not (null or 0);

    private static BigInteger LeastMultiple(IEnumerable<BigInteger> numbers) =>
        numbers.Aggregate(BigInteger.One, (all, n) => all / BigInteger.GreatestCommonDivisor(all, n) * n);
}
