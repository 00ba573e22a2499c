using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>Writes a formula of roots, exact forms and circular functions of rational degrees as a quotient of cosine sums.</summary>
internal sealed class CosineForm(CosineTable table)
{
    private readonly CosineRatios ratios = new(table);
    private readonly Dictionary<Expr, CosineRatio?> done = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<BigInteger, CosineSum?> surds = new()
    {
        [2] = table.Cosine(45) * 2,
        [3] = table.Cosine(30) * 2,
        [5] = table.Cosine(36) * 4 + -table.One,
    };

    /// <summary>Null when it becomes too long.</summary>
    public CosineRatio? Of(Expr expr) => done.TryGetValue(expr, out CosineRatio? known) ? known : done[expr] = Make(expr);

    private CosineRatio? Make(Expr expr) => expr switch
    {
        Quantity(var amount, _) => Of(amount),
        Sum(var a, var b) => ratios.Plus(Of(a), Of(b)),
        Difference(var a, var b) => ratios.Plus(Of(a), Of(b)?.Negated),
        Product(var a, var b) => ratios.Times(Of(a), Of(b)),
        Quotient(var a, var b) => ratios.Times(Of(a), ratios.Inverse(Of(b))),
        Power(var a, var exponent) => Enumerable.Repeat(Of(a), exponent).Aggregate(ratios.Times),
        Negative(var a) => Of(a)?.Negated,
        Root(var a) => ratios.Root(Of(a)),
        Apply(Function.Sine, Quantity angle) => CosineRatio.Of(table.Cosine(90 - angle.Amount.Rational!.Value)),
        Apply(Function.Cosine, Quantity angle) => CosineRatio.Of(table.Cosine(angle.Amount.Rational!.Value)),
        _ => throw new ArgumentException(expr.ToString(), nameof(expr)),
    };

    private CosineRatio? Of(Exact amount)
    {
        CosineRatio? front = Of(amount.Front);
        return amount.Under is { } under ? ratios.Times(front, ratios.Root(Of(under))) : front;
    }

    private CosineRatio? Of(SurdSum sum)
    {
        int least = int.Min(0, sum.Terms.Select(t => t.PiPower).DefaultIfEmpty().Min());
        CosineSum all = table.Zero;
        foreach (SurdTerm term in sum.Terms)
        {
            if (Surd(term.Radicand) is not { } root || table.Times(root, table.Pi(term.PiPower - least) * term.Coefficient) is not { } product) return null;
            all += product;
        }

        return CosineRatio.Of(all).Over(table.Pi(-least), 1);
    }

    private CosineSum? Surd(BigInteger radicand)
    {
        if (radicand.IsOne) return table.One;
        if (surds.TryGetValue(radicand, out CosineSum? known)) return known;
        foreach (int prime in (int[])[2, 3, 5])
        {
            if ((radicand % prime).IsZero)
                return surds[radicand] = Surd(radicand / prime) is { } rest ? table.Times(rest, surds[prime]!) : null;
        }

        return surds[radicand] = table.Root(table.Number(new Fraction(radicand)));
    }
}
