using Fractions;

namespace Explain.Tests.Formulas;

/// <summary>Short ways to write formulas in tests.</summary>
internal static class Make
{
    public static Expr Number(Fraction value) => new Quantity(Exact.Of(value), Unit.None);

    public static Expr Number(string value) => Number(Fraction.FromString(value, System.Globalization.CultureInfo.InvariantCulture));

    public static Expr Of(string value, Unit unit) => new Quantity(Exact.Of(Fraction.FromString(value, System.Globalization.CultureInfo.InvariantCulture)), unit);

    public static Expr M(string value) => Of(value, Unit.Metre);

    public static Expr Deg(string value) => Of(value, Unit.Degree);

    public static Expr Pi => new Quantity(Exact.Pi, Unit.None);

    public static Expr OneHalf => Number(new Fraction(1, 2));

    public static Expr Length(string ends) => new Length(new Point(ends[..1]), new Point(ends[1..]));

    public static Expr Angle(string points) => new Angle(new Point(points[..1]), new Point(points[1..2]), new Point(points[2..]));

    public static Expr Letter(string name) => new Letter(name);

    public static Expr Sin(Expr to) => new Apply(Function.Sine, to);

    public static Expr Cos(Expr to) => new Apply(Function.Cosine, to);

    public static Expr Tan(Expr to) => new Apply(Function.Tangent, to);

    public static Expr ArcSin(Expr to) => new Apply(Function.ArcSine, to);

    public static Expr ArcCos(Expr to) => new Apply(Function.ArcCosine, to);

    public static Expr ArcTan(Expr to) => new Apply(Function.ArcTangent, to);

    public static Expr Root(Expr of) => new Root(of);

    public static Expr Square(Expr of) => new Power(of, 2);

    public static Symbol Symbol(Expr use) => ((SymbolUse)use).Symbol;
}
