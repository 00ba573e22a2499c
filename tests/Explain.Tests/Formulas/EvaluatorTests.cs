using System.Numerics;
using Fractions;
using static Explain.Tests.Formulas.Make;

namespace Explain.Tests.Formulas;

public sealed class EvaluatorTests
{
    private static readonly Fraction Tiny = new(BigInteger.One, BigInteger.Pow(10, 40));

    public static TheoryData<string> Proved => [.. Equalities.Keys];

    private static Dictionary<string, (Expr Left, Exact Right)> Equalities { get; } = new()
    {
        ["12 tan 45"] = (12 * Tan(Deg("45")), Exact.Of(12)),
        ["10 sin 30"] = (10 * Sin(Deg("30")), Exact.Of(5)),
        ["10 sin 65 / sin 65"] = (10 * Sin(Deg("65")) / Sin(Deg("65")), Exact.Of(10)),
        ["sin 10 sin 50 sin 70"] = (Sin(Deg("10")) * Sin(Deg("50")) * Sin(Deg("70")), Exact.Of(new Fraction(1, 8))),
        ["sin 20 sin 40 sin 80"] = (Sin(Deg("20")) * Sin(Deg("40")) * Sin(Deg("80")), Exact.Divide(Exact.Root(Exact.Of(3))!, Exact.Of(8))!),
        ["sum of addition formula"] = (120 * (Sin(Deg("71")) * Cos(Deg("62")) + Sin(Deg("62")) * Cos(Deg("71"))) / Sin(Deg("47")), Exact.Of(120)),
        ["half degrees"] = (Square(Sin(Deg("33.5"))) + Square(Cos(Deg("33.5"))), Exact.One),
        ["tenths of degrees"] = (Tan(Deg("33.7")) * Tan(Deg("56.3")), Exact.One),
        ["minutes"] = (Sin(Of("1740", Unit.Minute)) / Sin(Deg("29")), Exact.One),
        ["root of a square"] = (Root(Square(3 * Cos(Deg("11")))) / Cos(Deg("11")), Exact.Of(3)),
        ["root of a square of a negative"] = (Root(Square(Cos(Deg("131")))) / Cos(Deg("131")), Exact.Of(-1)),
        ["cosine rule and back"] = (Square(Root(49 + 64 - 112 * Cos(Deg("37")))) + 112 * Cos(Deg("37")), Exact.Of(113)),
        ["nested roots that add"] = (Root(2 + Root(Number(3))) + Root(2 - Root(Number(3))), Exact.Root(Exact.Of(6))!),
        ["sine of arccosine"] = (10 * Sin(ArcCos(Number("0.8"))), Exact.Of(6)),
        ["cosine of twice an arcsine"] = (Cos(2 * ArcSin(Number("0.6"))), Exact.Of(new Fraction(7, 25))),
        ["sine of half an arccosine"] = (Sin(ArcCos(Number("0.28")) / 2), Exact.Of(new Fraction(3, 5))),
        ["tangent of a sum"] = (Tan(ArcTan(Number("0.5")) + ArcTan(Number(new Fraction(1, 3)))), Exact.One),
    };

    private static Dictionary<string, (Expr Angle, Fraction Degrees)> Angles { get; } = new()
    {
        ["180 - arccos 4/5 - arccos 3/5"] = (Deg("180") - ArcCos(Number("0.8")) - ArcCos(Number("0.6")), 90),
        ["three angles of 6, 7, 9.5"] = (Side(6, 7, 9.5m) + Side(7, 9.5m, 6) + Side(9.5m, 6, 7), 180),
        ["exterior angle"] = (180 * Deg("1") - Side(4, 5, 6) - Side(5, 6, 4) - Side(6, 4, 5) + Deg("35"), 35),
        ["Machin"] = (4 * ArcTan(Number("0.2")) - ArcTan(Number(new Fraction(1, 239))), 45),
        ["4.5 and 1.5 seen from the root of 6.75"] = (ArcTan(M("4.5") / Root(Of("6.75", Unit.Metre.To(2)))) - ArcTan(M("1.5") / Root(Of("6.75", Unit.Metre.To(2)))), 30),
        ["4, 5, 6 holds twice an angle"] = (Side(6, 4, 5) - 2 * Side(4, 5, 6), 0),
        ["arcsine of sine"] = (ArcSin(Sin(Deg("62"))), 62),
        ["arcsine of sine beyond 90"] = (ArcSin(Sin(Deg("118.5"))), new Fraction(123, 2)),
        ["arctangent from a right triangle"] = (ArcTan(5 * Sin(Deg("52")) / (5 * Cos(Deg("52")))), 52),
    };

    public static TheoryData<string> ProvedAngles => [.. Angles.Keys];

    [Theory]
    [MemberData(nameof(Proved))]
    public void What_is_exact_is_proved(string name)
    {
        (Expr left, Exact right) = Equalities[name];
        Assert.Equal(right, Exactly(left));
        Assert.Equal(0, Evaluator.Compare(left, new Quantity(right, Unit.None)));
    }

    [Theory]
    [MemberData(nameof(Proved))]
    public void A_near_miss_is_not_called_equal(string name)
    {
        (Expr left, Exact right) = Equalities[name];
        Exact beside = Exact.Add(right, Exact.Of(Tiny))!;
        Assert.Equal(-1, Evaluator.Compare(left, new Quantity(beside, Unit.None)));
        Assert.NotEqual(right, Assert.IsType<Evaluated>(Evaluator.Evaluate(left + Number(Tiny))).Value.Exact);
    }

    [Theory]
    [MemberData(nameof(ProvedAngles))]
    public void Angles_are_proved(string name)
    {
        (Expr angle, Fraction degrees) = Angles[name];
        Value value = Assert.IsType<Evaluated>(Evaluator.Evaluate(angle)).Value;
        Assert.Equal(Exact.Of(degrees), value.Exact);
        Assert.Equal(Unit.Degree, value.Unit);
    }

    [Theory]
    [MemberData(nameof(ProvedAngles))]
    public void An_angle_beside_is_not_called_equal(string name)
    {
        (Expr angle, Fraction degrees) = Angles[name];
        Assert.Equal(1, Evaluator.Compare(angle, new Quantity(Exact.Of(degrees - Tiny), Unit.Degree)));
        Assert.Null(Assert.IsType<Evaluated>(Evaluator.Evaluate(angle + new Quantity(Exact.Of(Tiny), Unit.Degree) * Cos(Deg("13")))).Value.Exact);
    }

    private static Exact? Exactly(Expr expr) => Assert.IsType<Evaluated>(Evaluator.Evaluate(expr)).Value.Exact;

    /// <summary>The angle between b and c, opposite a.</summary>
    private static Expr Side(decimal a, decimal b, decimal c)
    {
        (Expr x, Expr y, Expr z) = (Metres(a), Metres(b), Metres(c));
        return ArcCos((Square(y) + Square(z) - Square(x)) / (2 * y * z));
    }

    private static Expr Metres(decimal value) => new Quantity(Exact.Of(Fraction.FromDecimal(value)), Unit.Metre);
}
