using Fractions;

namespace Explain;

/// <summary>
/// The sine and the cosine of one angle, written without inverse functions: sin(arccos x) = √(1 − x²), the addition formulas,
/// and half angles. An inverse function lies between −180° and 180°, so the cosine of its half is not negative.
/// </summary>
internal sealed record SineAndCosine(Expr Sine, Expr Cosine)
{
    private const int MostTimes = 12;

    /// <summary>Null when a multiple is too large, or a part other than a half, a quarter, and so on.</summary>
    public static SineAndCosine? Of(AngleSum sum, Func<Expr, Expr?> algebraic)
    {
        SineAndCosine all = Degrees(sum.Degrees);
        foreach ((Apply inverse, Fraction times) in sum.Terms)
        {
            if (algebraic(inverse.To) is not { } ratio || Times(inverse.Function, ratio, times) is not { } pair) return null;
            all = all.Plus(pair);
        }

        return all;
    }

    private static SineAndCosine Degrees(Fraction degrees)
    {
        Expr angle = new Quantity(Exact.Of(degrees), Unit.None);
        return new(new Apply(Function.Sine, angle), new Apply(Function.Cosine, angle));
    }

    private static SineAndCosine? Times(Function function, Expr ratio, Fraction times)
    {
        Fraction reduced = Fraction.Abs(times).Reduce();
        if (!reduced.Denominator.IsPowerOfTwo || reduced.Numerator > MostTimes || reduced.Denominator > MostTimes) return null;
        SineAndCosine one = Inverse(function, ratio);
        for (int part = 1; part < reduced.Denominator; part *= 2) one = one.Half(function);
        SineAndCosine all = one;
        for (int i = 1; i < reduced.Numerator; i++) all = all.Plus(one);
        return times.IsNegative ? new(-all.Sine, all.Cosine) : all;
    }

    private static SineAndCosine Inverse(Function function, Expr ratio)
    {
        Expr square = new Power(ratio, 2);
        Expr other = new Root(function == Function.ArcTangent ? 1 + square : 1 - square);
        return function switch
        {
            Function.ArcSine => new(ratio, other),
            Function.ArcCosine => new(other, ratio),
            _ => new(ratio / other, 1 / other),
        };
    }

    private SineAndCosine Half(Function function)
    {
        Expr cosine = new Root((1 + Cosine) / 2);
        return new(function == Function.ArcCosine ? new Root((1 - Cosine) / 2) : Sine / (2 * cosine), cosine);
    }

    private SineAndCosine Plus(SineAndCosine other) => new(
        Sine * other.Cosine + Cosine * other.Sine,
        Cosine * other.Cosine - Sine * other.Sine);
}
