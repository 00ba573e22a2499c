using Fractions;
using static Explain.Tests.Formulas.Make;

namespace Explain.Tests.Formulas;

public sealed class EvaluatorDomainTests
{
    public static TheoryData<string> Outside => [.. NoValue.Keys];

    private static Dictionary<string, Expr> NoValue { get; } = new()
    {
        ["root of a negative"] = 1 + Root(49 - 50 * Number("1.01")),
        ["root of a negative that is not exact"] = Root(Cos(Deg("37")) - Cos(Deg("36"))),
        ["arcsine beyond 1"] = ArcSin(27 * Sin(Deg("80")) / 20),
        ["arccosine below -1"] = ArcCos(Number("-1.0000000000000000001")),
        ["divisor 0"] = 5 / (Number("0.3") - Number("0.1") * 3),
        ["divisor proved to be 0"] = 5 / (Sin(Deg("71")) * Cos(Deg("19")) + Cos(Deg("71")) * Sin(Deg("19")) - 1),
        ["tangent of 90"] = Tan(Deg("90")),
        ["tangent of 270"] = Tan(Deg("180") + Deg("90")),
        ["tangent of a right angle that is proved"] = Tan(ArcCos(Number("0.8")) + ArcCos(Number("0.6"))),
    };

    private static Dictionary<string, (Expr Of, int Sign)> OnTheBorder { get; } = new()
    {
        ["root of 0"] = (Root(Number("0.3") - Number("0.1") * 3), 0),
        ["root of what is proved to be 0"] = (Root(Square(Sin(Deg("71"))) + Square(Cos(Deg("71"))) - 1), 0),
        ["arcsine of what is proved to be 1"] = (ArcSin(Square(Sin(Deg("71"))) + Square(Cos(Deg("71")))) - Deg("90"), 0),
        ["arccosine of -1"] = (ArcCos(-Number("1")) - Deg("180"), 0),
        ["tangent beside 90"] = (Tan(Deg("90.00000000000000000001")), -1),
        ["tangent of 89.999 and so on"] = (Tan(Deg("89.99999999999999999999")), 1),
    };

    public static TheoryData<string> Borders => [.. OnTheBorder.Keys];

    [Theory]
    [MemberData(nameof(Outside))]
    public void What_has_no_value_is_said(string name)
    {
        Assert.IsType<OutsideDomain>(Evaluator.Evaluate(NoValue[name]));
        Assert.Null(Evaluator.Sign(NoValue[name]));
    }

    [Theory]
    [MemberData(nameof(Borders))]
    public void The_border_belongs_to_the_domain(string name) => Assert.Equal(OnTheBorder[name].Sign, Evaluator.Sign(OnTheBorder[name].Of));

    [Fact]
    public void The_part_without_a_value_is_named()
    {
        Expr part = Assert.IsType<OutsideDomain>(Evaluator.Evaluate(2 * Root(1 - Number("4")) + 1)).Part;
        Assert.Equal(Root(1 - Number("4")), part);
    }

    [Fact]
    public void Units_are_calculated()
    {
        Assert.Equal(Value.Of(Exact.Of(6), Unit.Metre.To(2)), Result(M("2") * M("3")));
        Assert.Equal(Value.Of(Exact.Of(600), Unit.Centimetre.To(2)), Result(Of("2", Unit.Centimetre) * M("3")));
        Assert.Equal(Value.Of(Exact.Of(Fraction.FromString("160.02")), Unit.Centimetre), Result(Of("0", Unit.Centimetre) + Of("5", Unit.Foot) + Of("3", Unit.Inch)));
        Assert.Equal(Value.Of(Exact.Of(5), Unit.Metre), Result(Root(Square(M("3")) + Square(Of("400", Unit.Centimetre)))));
        Assert.Equal(Value.Of(Exact.Of(2), Unit.None), Result(M("1") / Of("50", Unit.Centimetre)));
        Assert.Equal(Value.Of(Exact.Of(new Fraction(181, 2)), Unit.Degree), Result(Deg("90") + Of("30", Unit.Minute)));
        Assert.Equal(Value.Of(Exact.Of(7), Unit.Metre), Result(Sin(Deg("30")) / M("3") * M("42") * M("1")));
        Assert.Equal(Value.Of(Exact.Of(76), Unit.Degree), Result((2 * Number("30") + 16) * Deg("1")));
        Assert.Equal(Value.Of(Exact.Of(2), Unit.None), Result(Deg("120") / Of("3600", Unit.Minute)));
    }

    [Fact]
    public void Kinds_that_do_not_go_together_are_a_fault_of_the_caller()
    {
        Expr[] faults = [M("1") + Number("1"), M("1") - Deg("1"), M("1") * Deg("1"), Sin(Number("30")), ArcSin(M("1")), Root(M("4")),
            1 / M("2"), Deg("3") * Deg("3"), Square(Deg("3")), M("1") + Square(M("1")), Letter("x"), new ValueOf(new ClaimId("g1"))];
        foreach (Expr fault in faults) Assert.Throws<ArgumentException>(() => Evaluator.Evaluate(fault));
    }

    [Fact]
    public void Numbers_without_a_short_decimal_are_enclosed()
    {
        Value value = Result(M("27") * Sin(Deg("38")));
        Assert.Null(value.Exact);
        Assert.Null(Decimals.CandidateIn(value.True, 15));
        Assert.InRange(value.Number, 16.6228598, 16.6228599);
    }

    [Fact]
    public void Comparisons_of_lengths_convert() =>
        Assert.Equal((0, 1, -1), (Evaluator.Compare(Of("1", Unit.Inch), Of("2.54", Unit.Centimetre)), Evaluator.Compare(M("1"), Of("1", Unit.Yard)), Evaluator.Compare(Root(Number("2")), Number("1.415"))));

    private static Value Result(Expr expr) => Assert.IsType<Evaluated>(Evaluator.Evaluate(expr)).Value;
}
