using Fractions;

namespace Explain;

/// <summary>A product and quotient as a rational number, factors above and factors below the line.</summary>
internal sealed record Factors(Fraction Number, Items<Expr> Over, Items<Expr> Under)
{
    public static Factors One { get; } = new(Fraction.One, [], []);

    public Factors Inverse => new(Number.Reciprocal(), Under, Over);

    /// <summary>What stands below the line, the denominator of the number too; 1 if nothing does.</summary>
    public Factors Divisor => new(new Fraction(Number.Reduce().Denominator), Under, []);

    public static Factors Of(Expr expr) => expr switch
    {
        Product(var a, var b) => Of(a).Beside(Of(b)),
        Quotient(var a, var b) when Of(b) is { Number.IsZero: false } divisor => Of(a).Beside(divisor.Inverse),
        Negative(var a) => Of(a) is var inner ? inner with { Number = -inner.Number } : One,
        Quantity(var amount, var unit) when amount.Rational is { } number && unit.Power == 0 => One with { Number = number },
        _ => One with { Over = [expr] },
    };

    /// <summary>The product, factors that stand above and below taken out.</summary>
    public Factors Times(Factors other)
    {
        Factors all = Beside(other);
        List<Expr> over = [], under = [.. all.Under];
        foreach (Expr factor in all.Over)
            if (!under.Remove(factor)) over.Add(factor);
        return new(all.Number, ItemsFactory.From(over), ItemsFactory.From(under));
    }

    /// <summary>Writes it as schools do: numbers first, then letters, brackets, functions; one line for all division.</summary>
    public Expr Write()
    {
        Fraction size = Fraction.Abs(Number).Reduce();
        Expr top = Product(new Fraction(size.Numerator), Over.OrderBy(Rank));
        Expr all = size.Denominator.IsOne && Under.Count == 0 ? top : top / Product(new Fraction(size.Denominator), Under);
        return Number.IsNegative ? -all : all;
    }

    private static Expr Product(Fraction number, IEnumerable<Expr> factors)
    {
        Expr first = new Quantity(Exact.Of(number), Unit.None);
        return number == Fraction.One && factors.Any() ? factors.Aggregate(Times) : factors.Aggregate(first, Times);
    }

    private static Expr Times(Expr left, Expr right) => new Product(left, right);

    private static int Rank(Expr factor) => factor switch
    {
        Quantity => 0,
        Apply => 3,
        Sum or Difference or Negative or Root => 2,
        _ => 1,
    };

    private Factors Beside(Factors other) => new((Number * other.Number).Reduce(), [.. Over, .. other.Over], [.. Under, .. other.Under]);
}
