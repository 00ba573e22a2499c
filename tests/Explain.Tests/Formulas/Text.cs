namespace Explain.Tests.Formulas;

/// <summary>Writes formulas so that a test can be read: brackets wherever the tree has them and a reader needs them.</summary>
internal static class Text
{
    public static string Of(Equation equation) => $"{Of(equation.Left)} = {Of(equation.Right)}";

    public static string Of(Expr expr) => expr switch
    {
        Sum(var a, var b) => $"{Of(a)} + {In(b, 1)}",
        Difference(var a, var b) => $"{Of(a)} − {In(b, 2)}",
        Product(var a, var b) => $"{In(a, 2)} × {In(b, 3)}",
        Quotient(var a, var b) => $"{In(a, 2)} ÷ {In(b, 3)}",
        Negative(var a) => $"−{In(a, 2)}",
        Power(var a, var n) => $"{In(a, 4)}^{n}",
        Root(var a) => $"√({Of(a)})",
        Apply(var f, var a) => $"{Name(f)} {In(a, 4)}",
        Quantity(var amount, var unit) => amount + unit.Symbol,
        SymbolUse(Letter(var name)) => name,
        SymbolUse(Length(var a, var b)) => a.Name + b.Name,
        SymbolUse(Angle(var a, var b, var c, _)) => a.Name + b.Name + c.Name,
        _ => expr.ToString(),
    };

    private static string In(Expr expr, int tightness) => Tightness(expr) < tightness ? $"({Of(expr)})" : Of(expr);

    private static int Tightness(Expr expr) => expr switch
    {
        Sum or Difference or Negative => 1,
        Product or Quotient => 2,
        Apply => 3,
        _ => 4,
    };

    private static string Name(Function function) => function switch
    {
        Function.Sine => "sin",
        Function.Cosine => "cos",
        Function.Tangent => "tan",
        Function.ArcSine => "arcsin",
        Function.ArcCosine => "arccos",
        _ => "arctan",
    };
}
