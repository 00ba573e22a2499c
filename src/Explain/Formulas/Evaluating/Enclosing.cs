using Fractions;

namespace Explain;

/// <summary>One operation of a formula on enclosures, narrow or wide. Null where the operation may have no value.</summary>
internal static class Enclosing
{
    private static readonly Fraction[] Ends = [Fraction.MinusOne, Fraction.One];

    public static Enclosure? Of(Expr expr, ReadOnlySpan<Enclosure> parts) => expr switch
    {
        Sum => parts[0] + parts[1],
        Difference => parts[0] - parts[1],
        Product => parts[0] * parts[1],
        Quotient => Enclosure.Divide(parts[0], parts[1]),
        Power(_, var exponent) => Enclosure.Power(parts[0], exponent),
        Root => Enclosure.Sqrt(parts[0]),
        Negative => -parts[0],
        Apply(var function, _) => Of(function, parts[0]),
        _ => throw new ArgumentException(expr.ToString(), nameof(expr)),
    };

    /// <summary>A part whose value is known to be in the domain, without what lies outside it: no negative number under a root, no sine beyond 1.</summary>
    public static Enclosure Clamped(Expr expr, Enclosure part) => expr switch
    {
        Root => NotNegative(part),
        Apply(Function.ArcSine or Function.ArcCosine, _) when part.Low < Ends[0] || part.High > Ends[1] =>
            Enclosure.Between(Inside(part.Low), Inside(part.High), part.Bits),
        _ => part,
    };

    /// <summary>The numbers of 0 and more inside; 0 when there is none.</summary>
    public static Enclosure NotNegative(Enclosure value) => value.LowUnits.Sign >= 0 ? value
        : Enclosure.Between(Fraction.Zero, value.High.IsPositive ? value.High : Fraction.Zero, value.Bits);

    private static Fraction Inside(Fraction value) => value < Ends[0] ? Ends[0] : value > Ends[1] ? Ends[1] : value;

    private static Enclosure? Of(Function function, Enclosure part) => function switch
    {
        Function.Sine => Trigonometry.Sin(part),
        Function.Cosine => Trigonometry.Cos(part),
        Function.Tangent => Trigonometry.Tan(part),
        Function.ArcSine => Trigonometry.ArcSin(part),
        Function.ArcCosine => Trigonometry.ArcCos(part),
        _ => Trigonometry.ArcTan(part),
    };
}
