using Fractions;

namespace Explain;

/// <summary>The exact form of a part of a formula, from the exact forms of its parts; null where there is none.</summary>
internal static class ExactForm
{
    public static Exact? Of(Expr expr, Func<Expr, Exact?> of) => expr switch
    {
        Quantity(var amount, _) => amount,
        Sum(var a, var b) => of(a) is { } left && of(b) is { } right ? Exact.Add(left, right) : null,
        Difference(var a, var b) => ReferenceEquals(a, b) ? Exact.Zero
            : of(a) is { } left && of(b) is { } right ? Exact.Subtract(left, right) : null,
        Product(var a, var b) => IsZero(of(a)) || IsZero(of(b)) ? Exact.Zero
            : of(a) is { } left && of(b) is { } right ? Exact.Multiply(left, right) : null,
        Quotient(var a, var b) => IsZero(of(a)) ? Exact.Zero : ReferenceEquals(a, b) ? Exact.One
            : of(a) is { } left && of(b) is { } right ? Exact.Divide(left, right) : null,
        Power(var a, var exponent) => of(a) is { } form ? Exact.Power(form, exponent) : a is Root(var under) && exponent == 2 ? of(under) : null,
        Root(var a) => of(a) is { } form ? Exact.Root(form) : null,
        Negative(var a) => of(a)?.Negate(),
        Apply(var function, var a) => of(a) is { } form ? Of(function, form) : null,
        _ => null,
    };

    private static Exact? Of(Function function, Exact form) => function switch
    {
        Function.ArcSine => Degrees(SpecialAngles.ArcSin(form)),
        Function.ArcCosine => Degrees(SpecialAngles.ArcCos(form)),
        Function.ArcTangent => Degrees(SpecialAngles.ArcTan(form)),
        _ => form.Rational is { } degrees ? Of(function, degrees) : null,
    };

    private static Exact? Of(Function function, Fraction degrees) => function switch
    {
        Function.Sine => SpecialAngles.Sin(degrees),
        Function.Cosine => SpecialAngles.Cos(degrees),
        _ => SpecialAngles.Tan(degrees),
    };

    private static bool IsZero(Exact? form) => form?.Sign == 0;

    private static Exact? Degrees(Fraction? angle) => angle is { } known ? Exact.Of(known) : null;
}
