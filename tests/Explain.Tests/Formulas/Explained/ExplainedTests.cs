using CsCheck;

namespace Explain.Tests.Formulas;

public class ExplainedTests
{
    private const int Cases = 10_000;
    private static readonly Gen<double> Size = Gen.Double[0.001, 1000];
    private static readonly Gen<int> Edges = Gen.Int[3, 40];

    [Fact]
    public void Path_area_is_its_plain_method_to_the_last_bit() => Gen.Select(Size, Size).Sample((r, w) =>
        Same(Gardens.Worked.PathArea(r, w), Gardens.PathArea(r, w), r, w), iter: Cases);

    [Fact]
    public void Bed_area_is_its_plain_method_to_the_last_bit() => Gen.Select(Size, Edges).Sample((s, n) =>
        Same(Gardens.Worked.BedArea(s, n), Gardens.BedArea(s, n), s, n), iter: Cases);

    [Fact]
    public void Third_side_is_its_plain_method_to_the_last_bit() => Gen.Select(Size, Size, Gen.OneOf(Gen.Const(90.0), Gen.Double[0.1, 179.9])).Sample((a, b, c) =>
        Same(Gardens.Worked.ThirdSide(a, b, c), Gardens.ThirdSide(a, b, c), a, b, c), iter: Cases);

    [Fact]
    public void Angle_between_is_its_plain_method_to_the_last_bit() => Gen.Select(Size, Size, Gen.Double[0.01, 0.99]).Sample((a, b, part) =>
    {
        double c = Math.Abs(a - b) + part * 2 * Math.Min(a, b);
        return Same(Gardens.Worked.AngleBetween(a, b, c), Gardens.AngleBetween(a, b, c), a, b, c);
    }, iter: Cases);

    [Fact]
    public void Grazed_is_its_plain_method_to_the_last_bit() => Gen.Select(Size, Size).Sample((t, f) =>
        Same(Gardens.Worked.Grazed(t, f), Gardens.Grazed(t, f), t, f), iter: Cases);

    [Fact]
    public void Steps_agree_with_the_plain_method() => Gen.Select(Size, Size, Edges, Gen.Double[1, 179]).Sample((a, b, n, c) =>
        Near(Gardens.Worked.PathArea(a, b)) && Near(Gardens.Worked.BedArea(a, n)) && Near(Gardens.Worked.ThirdSide(a, b, c)) && Near(Gardens.Worked.Grazed(a, b)), iter: 100);

    [Fact]
    public void Steps_are_exact_where_the_formula_is()
    {
        Items<ExplainedStep> steps = Gardens.Worked.PathArea(3.5, 1.5).Steps;
        Assert.Equal(["", "5 m", "25π m²", "49π/4 m²", "51π/4 m²"], steps.Select(Shown));
        Assert.IsType<ExplainedRequirement>(steps[0].Line);
    }

    [Fact]
    public void A_double_is_the_decimal_that_was_typed()
    {
        Explained<double> worked = Gardens.Worked.ThirdSide(0.1, 1e-7, 90);
        Assert.Equal([new(Exact.Of(new Fractions.Fraction(1, 10)), Unit.Metre), new(Exact.Of(new Fractions.Fraction(1, 10_000_000)), Unit.Metre), new(Exact.Of(90), Unit.Degree)], worked.Arguments);
        Gen.Double.Where(double.IsFinite).Sample(d => Doubles.Nearest(ShortestDecimal.Of(d)) == d, iter: Cases);
        Assert.Throws<ArgumentException>(() => ShortestDecimal.Of(double.NaN));
    }

    [Fact]
    public void Only_the_case_used_is_among_the_steps()
    {
        Assert.Equal(["", "5 m"], Gardens.Worked.ThirdSide(3, 4, 90).Steps.Select(Shown));
        Assert.Equal(["", "√13 m"], Gardens.Worked.ThirdSide(3, 4, 60).Steps.Select(Shown));
        Assert.Equal("5 m", Shown(Gardens.Worked.ThirdSide(3, 4, 90).Steps[^1]));
        ExplainedBranch branch = (ExplainedBranch)Gardens.Formulas.ThirdSide.Lines[0];
        Assert.Same(branch.Then[0], Gardens.Worked.ThirdSide(3, 4, 90).Steps[1].Line);
        Assert.Same(Gardens.Formulas.ThirdSide.Lines[1], Gardens.Worked.ThirdSide(3, 4, 60).Steps[1].Line);
    }

    [Fact]
    public void A_call_folds_its_own_steps()
    {
        ExplainedStep call = Gardens.Worked.Grazed(6, 4).Steps.Single(s => s.Line is ExplainedCall);
        Assert.Equal("π m²", Shown(call));
        Assert.Equal(["π m²"], call.Inner.Select(Shown));
        Assert.Equal(["", "0 m", "8π m²", "0 m²", "8π m²"], Gardens.Worked.Grazed(4, 6).Steps.Select(Shown));
    }

    [Fact]
    public void Any_unit_of_the_kind_may_be_put_in() => Assert.Equal("51π/4 m²",
        Shown(Gardens.Formulas.PathArea.Work([new Quantity(Exact.Of(350), Unit.Centimetre), new Quantity(Exact.Of(1500), Unit.Millimetre)])[^1]));

    [Fact]
    public void A_condition_is_decided_and_not_compared_in_doubles()
    {
        Explained<double> flat = Gardens.Worked.AngleBetween(0.1, 0.2, 0.3);   // in doubles 0.1 + 0.2 > 0.3
        Assert.Throws<ArgumentException>(() => flat.Steps);
        Assert.Equal("90°", Shown(Gardens.Worked.AngleBetween(0.3, 0.4, 0.5).Steps[^1]));
    }

    [Fact]
    public void Quantities_of_a_figure_take_the_place_of_the_parameters()
    {
        Point p = new("P"), q = new("Q"), r = new("R");
        Items<ExplainedLine> lines = Gardens.Formulas.ThirdSide.For([new Length(p, q), new Length(p, r), new Angle(q, p, r)]);
        Expr pq = new Length(p, q), pr = new Length(p, r);
        Assert.Equal(new ExplainedResult(new("c"), new Root(pq * pq + pr * pr), Unit.Metre, null).Is, ((ExplainedResult)((ExplainedBranch)lines[0]).Then[0]).Is);
        Assert.Equal([new(new Angle(q, p, r), Relation.Equal, Expr.Degrees(90))], ((ExplainedBranch)lines[0]).If);
        Assert.Throws<ArgumentException>(() => Gardens.Formulas.ThirdSide.For([]));
    }

    private static string Shown(ExplainedStep step) => step.Value is { } value ? value.Exact + (value.Unit.IsAngle ? "" : " ") + value.Unit : "";

    private static bool Same(Explained<double> worked, double plain, params double[] arguments)
    {
        long bits = BitConverter.DoubleToInt64Bits(plain);
        return bits == BitConverter.DoubleToInt64Bits(worked.Value) && bits == BitConverter.DoubleToInt64Bits(new PlainDoubles(worked.Formula, arguments).Run());
    }

    private static bool Near(Explained<double> worked) => Math.Abs(worked.Steps[^1].Value!.Number - worked.Value) <= 1e-9 * Math.Abs(worked.Value);
}
