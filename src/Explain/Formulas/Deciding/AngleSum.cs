using Fractions;

namespace Explain;

/// <summary>An angle as a rational number of degrees and rational multiples of inverse functions.</summary>
internal sealed class AngleSum
{
    private readonly Dictionary<Apply, Fraction> terms = new(ReferenceEqualityComparer.Instance);

    /// <summary>The rational part.</summary>
    public Fraction Degrees { get; private set; } = Fraction.Zero;

    /// <summary>Each inverse function and how often it is taken; never 0 times.</summary>
    public IEnumerable<KeyValuePair<Apply, Fraction>> Terms => terms.Where(t => !t.Value.IsZero);

    /// <summary>Null when the formula is not such a sum.</summary>
    public static AngleSum? Of(Expr expr, Reckoner reckoner)
    {
        AngleSum sum = new();
        return sum.Add(expr, Fraction.One, reckoner) ? sum : null;
    }

    public AngleSum Times(Fraction factor)
    {
        AngleSum product = new() { Degrees = Degrees * factor };
        foreach ((Apply inverse, Fraction times) in Terms) product.terms[inverse] = times * factor;
        return product;
    }

    private bool Add(Expr expr, Fraction times, Reckoner reckoner)
    {
        if (reckoner.ExactOf(expr) is { } form) return AddDegrees(form.Rational * times);
        return expr switch
        {
            Sum(var a, var b) => Add(a, times, reckoner) && Add(b, times, reckoner),
            Difference(var a, var b) => Add(a, times, reckoner) && Add(b, -times, reckoner),
            Negative(var a) => Add(a, -times, reckoner),
            Product(var a, var b) when reckoner.ExactOf(a)?.Rational is { } factor => Add(b, times * factor, reckoner),
            Product(var a, var b) when reckoner.ExactOf(b)?.Rational is { } factor => Add(a, times * factor, reckoner),
            Quotient(var a, var b) when reckoner.ExactOf(b)?.Rational is { } divisor => Add(a, times / divisor, reckoner),
            Apply { Function: Function.ArcSine or Function.ArcCosine or Function.ArcTangent } inverse => AddInverse(inverse, times),
            _ => false,
        };
    }

    private bool AddDegrees(Fraction? degrees)
    {
        Degrees += degrees ?? Fraction.Zero;
        return degrees is not null;
    }

    private bool AddInverse(Apply inverse, Fraction times)
    {
        terms[inverse] = terms.GetValueOrDefault(inverse) + times;
        return true;
    }
}
