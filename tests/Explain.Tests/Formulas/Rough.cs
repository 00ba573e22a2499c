namespace Explain.Tests.Formulas;

/// <summary>A second evaluation of formulas, in doubles; NaN where there is no value.</summary>
internal static class Rough
{
    private const double Degree = Math.PI / 180;

    public static double Of(Expr expr, IReadOnlyDictionary<Symbol, double> at) => expr switch
    {
        SymbolUse(var symbol) => at[symbol],
        Quantity(var amount, _) => Value.Of(amount, Unit.None).Number,
        Sum(var a, var b) => Of(a, at) + Of(b, at),
        Difference(var a, var b) => Of(a, at) - Of(b, at),
        Product(var a, var b) => Of(a, at) * Of(b, at),
        Quotient(var a, var b) => Of(a, at) / Of(b, at),
        Power(var a, var n) => Math.Pow(Of(a, at), n),
        Root(var a) => Math.Sqrt(Of(a, at)),
        Negative(var a) => -Of(a, at),
        Apply(Function.Sine, var a) => Math.Sin(Of(a, at) * Degree),
        Apply(Function.Cosine, var a) => Math.Cos(Of(a, at) * Degree),
        Apply(Function.Tangent, var a) => Math.Tan(Of(a, at) * Degree),
        Apply(Function.ArcSine, var a) => Math.Asin(Of(a, at)) / Degree,
        Apply(Function.ArcCosine, var a) => Math.Acos(Of(a, at)) / Degree,
        Apply(Function.ArcTangent, var a) => Math.Atan(Of(a, at)) / Degree,
        _ => throw new ArgumentException(expr.ToString()),
    };
}
