using static Explain.Tests.Formulas.Make;

namespace Explain.Tests.Formulas;

/// <summary>Rearranged formulas read as in a textbook, with the lines that a teacher writes.</summary>
public sealed class IsolateFormTests
{
    private static readonly (Expr A, Expr B, Expr C) Angles = (Letter("A"), Letter("B"), Letter("C"));
    private static readonly (Expr A, Expr B, Expr C) Sides = (Letter("a"), Letter("b"), Letter("c"));

    private static readonly Equation SineRule = new(Length("PT") / Sin(Angle("PQT")), Length("PQ") / Sin(Angle("PTQ")));
    private static readonly Equation SineRuleForAngle = new(Length("BC") / Sin(Angles.A), Length("CA") / Sin(Angles.B));
    private static readonly Equation CosineRule = new(Square(Sides.A), Square(Sides.B) + Square(Sides.C) - 2 * Sides.B * Sides.C * Cos(Angles.A));
    private static readonly Equation AngleSum = new(Angles.A + Angles.B + Angles.C, Deg("180"));
    private static readonly Equation Area = new(Letter("K"), OneHalf * Sides.A * Sides.B * Sin(Angles.C));
    private static readonly Equation Baseline = new(Length("TF") / Tan(Letter("P")) + Length("TF") / Tan(Letter("Q")), Length("PQ"));
    private static readonly Equation Similar = new(Length("AB") / Length("ED"), Letter("x") / (Letter("x") + Length("CD")));

    [Fact]
    public void Sine_rule_for_a_side() => Lines(Isolate.For(SineRule, Symbol(Length("PT"))),
        "PT ÷ sin PQT = PQ ÷ sin PTQ",
        "PT = PQ × sin PQT ÷ sin PTQ");

    [Fact]
    public void Sine_rule_for_the_side_on_the_right() => Lines(Isolate.For(SineRule, Symbol(Length("PQ"))),
        "PT ÷ sin PQT = PQ ÷ sin PTQ",
        "PQ ÷ sin PTQ = PT ÷ sin PQT",
        "PQ = PT × sin PTQ ÷ sin PQT");

    [Fact]
    public void Sine_rule_for_a_sine() => Lines(Isolate.For(SineRuleForAngle, Sin(Angles.A)),
        "BC ÷ sin A = CA ÷ sin B",
        "sin A ÷ BC = sin B ÷ CA",
        "sin A = BC × sin B ÷ CA");

    [Fact]
    public void Sine_rule_for_an_angle_has_two_values()
    {
        Isolation isolation = Isolate.For(SineRuleForAngle, Symbol(Angles.A))!;
        Assert.Equal("arcsin (BC × sin B ÷ CA)", Text.Of(isolation.Formula));
        Assert.Equal((SecondValue.Supplement, "180° − arcsin (BC × sin B ÷ CA)"), (isolation.Second, Text.Of(isolation.Other!)));
    }

    [Fact]
    public void Cosine_rule_for_a_cosine() => Lines(Isolate.For(CosineRule, Cos(Angles.A)),
        "a^2 = b^2 + c^2 − 2 × b × c × cos A",
        "a^2 + 2 × b × c × cos A = b^2 + c^2",
        "2 × b × c × cos A = b^2 + c^2 − a^2",
        "cos A = (b^2 + c^2 − a^2) ÷ (2 × b × c)");

    [Fact]
    public void Cosine_rule_for_the_side_opposite()
    {
        Isolation isolation = Isolate.For(CosineRule, Symbol(Sides.A))!;
        Lines(isolation, "a^2 = b^2 + c^2 − 2 × b × c × cos A", "a = √(b^2 + c^2 − 2 × b × c × cos A)");
        Assert.Equal(SecondValue.Negative, isolation.Second);
    }

    [Fact]
    public void Cosine_rule_is_no_linear_equation_of_the_other_sides() => Assert.Null(Isolate.For(CosineRule, Symbol(Sides.B)));

    [Fact]
    public void Angles_of_a_triangle() => Lines(Isolate.For(AngleSum, Symbol(Angles.C)), "A + B + C = 180°", "C = 180° − A − B");

    [Fact]
    public void Angles_of_a_triangle_for_the_first() => Lines(Isolate.For(AngleSum, Symbol(Angles.A)), "A + B + C = 180°", "A = 180° − B − C");

    [Fact]
    public void Numbers_taken_from_a_number_are_worked_out() =>
        Lines(Isolate.For(new(Angles.A + Deg("90"), Deg("180")), Symbol(Angles.A)), "A + 90° = 180°", "A = 90°");

    [Fact]
    public void Area_for_a_side() => Lines(Isolate.For(Area, Symbol(Sides.B)),
        "K = 1/2 × a × b × sin C",
        "1/2 × a × b × sin C = K",
        "a × b × sin C = 2 × K",
        "b = 2 × K ÷ (a × sin C)");

    [Fact]
    public void Pythagoras_for_a_short_side() => Lines(Isolate.For(new(Square(Sides.A) + Square(Sides.B), Square(Sides.C)), Symbol(Sides.A)),
        "a^2 + b^2 = c^2", "a^2 = c^2 − b^2", "a = √(c^2 − b^2)");

    [Fact]
    public void A_common_factor_is_taken_out() => Lines(Isolate.For(Baseline, Symbol(Length("TF"))),
        "TF ÷ tan P + TF ÷ tan Q = PQ",
        "TF × (1 ÷ tan P + 1 ÷ tan Q) = PQ",
        "TF = PQ ÷ (1 ÷ tan P + 1 ÷ tan Q)");

    [Fact]
    public void A_divisor_is_cleared_and_brackets_are_multiplied_out() => Lines(Isolate.For(Similar, Symbol(Letter("x"))),
        "AB ÷ ED = x ÷ (x + CD)",
        "AB × (x + CD) = x × ED",
        "AB × x + AB × CD = x × ED",
        "AB × CD = x × ED − AB × x",
        "x × ED − AB × x = AB × CD",
        "x × (ED − AB) = AB × CD",
        "x = AB × CD ÷ (ED − AB)");

    [Fact]
    public void A_ratio_for_the_side_below() => Lines(Isolate.For(new(Tan(Letter("P")), Length("TF") / Length("PF")), Symbol(Length("PF"))),
        "tan P = TF ÷ PF",
        "TF ÷ PF = tan P",
        "TF = PF × tan P",
        "PF × tan P = TF",
        "PF = TF ÷ tan P");

    [Fact]
    public void A_ratio_for_the_angle() => Lines(Isolate.For(new(Tan(Letter("P")), Length("TF") / Length("PF")), Symbol(Letter("P"))),
        "tan P = TF ÷ PF", "P = arctan (TF ÷ PF)");

    [Fact]
    public void The_move_is_named_with_what_it_uses() => Assert.Equal(
        [new Move(MoveKind.Start), new Move(MoveKind.Add, 2 * Sides.B * Sides.C * Cos(Angles.A)), new Move(MoveKind.Subtract, Square(Sides.A)), new Move(MoveKind.Divide, 2 * Sides.B * Sides.C)],
        Isolate.For(CosineRule, Cos(Angles.A))!.Lines.Select(l => l.By));

    [Fact]
    public void What_does_not_occur_is_not_isolated() => Assert.Null(Isolate.For(AngleSum, Symbol(Sides.A)));

    [Fact]
    public void What_falls_out_is_not_isolated() => Assert.Null(Isolate.For(new(Sides.A + Sides.B, Sides.A + Sides.C), Symbol(Sides.A)));

    private static void Lines(Isolation? isolation, params string[] lines)
    {
        Assert.Equal(lines, isolation!.Lines.Select(l => Text.Of(l.Says)));
        Assert.Equal(isolation.Lines[^1].Says.Right, isolation.Formula);
    }
}
