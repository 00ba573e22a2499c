using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>Writes a formula of roots, exact forms and circular functions of rational degrees as a quotient of cosine sums.</summary>
internal sealed class CosineForm(RootTable table)
{
    private static readonly CosineSum One = CosineSum.Of(Fraction.One);

    private readonly Dictionary<Expr, CosineRatio?> done = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<BigInteger, CosineSum?> surds = new()
    {
        [2] = CosineSum.Cosine(45) * 2,
        [3] = CosineSum.Cosine(30) * 2,
        [5] = CosineSum.Cosine(36) * 4 + -One,
    };

    /// <summary>Null when it becomes too long.</summary>
    public CosineRatio? Of(Expr expr) => done.TryGetValue(expr, out CosineRatio? known) ? known : done[expr] = Make(expr);

    private CosineRatio? Make(Expr expr) => expr switch
    {
        Quantity(var amount, _) => Of(amount),
        Sum(var a, var b) => Plus(Of(a), Of(b)),
        Difference(var a, var b) => Plus(Of(a), Minus(Of(b))),
        Product(var a, var b) => Times(Of(a), Of(b)),
        Quotient(var a, var b) => Times(Of(a), Inverse(Of(b))),
        Power(var a, var exponent) => Enumerable.Repeat(Of(a), exponent).Aggregate(Times),
        Negative(var a) => Minus(Of(a)),
        Root(var a) => Root(Of(a)),
        Apply(Function.Sine, Quantity angle) => Ratio(CosineSum.Cosine(90 - angle.Amount.Rational!.Value)),
        Apply(Function.Cosine, Quantity angle) => Ratio(CosineSum.Cosine(angle.Amount.Rational!.Value)),
        _ => throw new ArgumentException(expr.ToString(), nameof(expr)),
    };

    private CosineRatio? Of(Exact amount)
    {
        CosineRatio? front = Of(amount.Front);
        return amount.Under is { } under ? Times(front, Root(Of(under))) : front;
    }

    private CosineRatio? Of(SurdSum sum)
    {
        int least = int.Min(0, sum.Terms.Select(t => t.PiPower).DefaultIfEmpty().Min());
        CosineSum all = CosineSum.Zero;
        foreach (SurdTerm term in sum.Terms)
        {
            if (Surd(term.Radicand) is not { } root || table.Times(root, Pi(term.PiPower - least) * term.Coefficient) is not { } product) return null;
            all += product;
        }

        return Ratio(all, Pi(-least));
    }

    private static CosineSum Pi(int power) => CosineSum.Of([(CosineTerm.One with { PiPower = power }, Fraction.One)]);

    private CosineSum? Surd(BigInteger radicand)
    {
        if (radicand.IsOne) return One;
        if (surds.TryGetValue(radicand, out CosineSum? known)) return known;
        foreach (int prime in (int[])[2, 3, 5])
        {
            if ((radicand % prime).IsZero)
                return surds[radicand] = Surd(radicand / prime) is { } rest ? table.Times(rest, surds[prime]!) : null;
        }

        return surds[radicand] = table.Root(CosineSum.Of(new Fraction(radicand)));
    }

    private CosineRatio? Plus(CosineRatio? first, CosineRatio? second)
    {
        if (first is not var (a, b) || second is not var (c, d)) return null;
        return table.Times(a, d) is { } left && table.Times(c, b) is { } right && table.Times(b, d) is { } bottom ? Ratio(left + right, bottom) : null;
    }

    private CosineRatio? Times(CosineRatio? first, CosineRatio? second) =>
        first is var (a, b) && second is var (c, d) && table.Times(a, c) is { } top && table.Times(b, d) is { } bottom ? Ratio(top, bottom) : null;

    // √(a ÷ b) = √(ab) ÷ |b|.
    private CosineRatio? Root(CosineRatio? under)
    {
        if (under is not var (a, b) || table.Times(a, b) is not { } square || table.Root(square) is not { } root) return null;
        return SignOf(b) is { } sign ? Ratio(root, b * sign) : null;
    }

    private int? SignOf(CosineSum sum) => Enclosure.Ladder.Select(bits => table.Enclose(sum, bits).Sign).FirstOrDefault(s => s is not null);

    private static CosineRatio? Minus(CosineRatio? value) => value is var (top, bottom) ? new(-top, bottom) : null;

    private static CosineRatio? Inverse(CosineRatio? value) => value is var (top, bottom) ? Ratio(bottom, top) : null;

    private static CosineRatio? Ratio(CosineSum top) => new(top, One);

    private static CosineRatio? Ratio(CosineSum top, CosineSum bottom) =>
        bottom.Rational is { IsZero: false } divisor ? new(top * divisor.Reciprocal(), One) : new(top, bottom);
}
