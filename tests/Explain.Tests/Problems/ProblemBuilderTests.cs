using static Explain.Units;

namespace Explain.Tests;

public sealed class ProblemBuilderTests
{
    private static Problem Mast => Problem.About("inaccessible distance")
        .Figure("PQT is a triangle")
        .Given("PQ", Metres(120, within: 0.5))
        .Given("angle QPT", Degrees(62, within: 0.5))
        .Given("angle PQT", "71° ± 0.5°")
        .Find("PT", "QT", "distance from T to PQ");

    [Fact]
    public void A_program_builds_what_a_file_says()
    {
        Problem file = Problem.Read("topic: inaccessible distance\nfigure: PQT is a triangle\ngiven:\n  PQ: 120 m ± 0.5 m\n  angle QPT: 62° ± 0.5°\n  angle PQT: 71° ± 0.5°\nfind: [PT, QT, distance from T to PQ]\n");
        Assert.Empty(Mast.Errors);
        Assert.Equal(file.Topic, Mast.Topic);
        Assert.Equal(file.Figure.Select(f => f.Says), Mast.Figure.Select(f => f.Says));
        Assert.Equal(file.Given.Select(g => g with { At = default }), Mast.Given.Select(g => g with { At = default }));
        Assert.Equal(file.Find.Select(g => g with { At = default }), Mast.Find.Select(g => g with { At = default }));
    }

    [Fact]
    public void Each_call_returns_a_new_problem()
    {
        Problem first = Problem.About("x").Figure("ABC is a triangle");
        Problem second = first.Given("AB", "3 cm").Find("BC").Title("t").Question("q").Assume("level").Method("sine rule").Round("2 decimal places")
            .Round("angles", "nearest degree").Accuracy("nearest 0.1 m").Tolerance("1 mm and 1°").Scale("1 cm to 10 m").Name("AB", "the rail").FindIn("a", "CA").Part("a", "Find CA.").MarksFor("a", 2);
        Assert.Empty(first.Given);
        Assert.Empty(second.Errors);
        Assert.Equal(("t", "q", "level", "sine rule"), (second.Title, second.Question, second.Assume.Single(), second.Methods.Single()));
        Assert.Equal([new RoundingRule(null, new(RoundingKind.DecimalPlaces, 2)), new RoundingRule("angles", new(RoundingKind.Nearest, 0) { Step = 1, Unit = Unit.Degree })], second.Round);
        Assert.Equal(new Quantity(Exact.Of(new Fractions.Fraction(1, 20)), Unit.Metre), second.LengthsWithin);
        Assert.Equal(("a", 2), (second.Marks.Single().Letter, second.Marks.Single().Marks));
    }

    [Fact]
    public void What_is_wrong_is_collected_and_never_thrown()
    {
        Problem wrong = Problem.About().Figure("ABC is a triangel").Given("AB", "9,5 cm").Given("BC", Metres(double.NaN)).Given("CA", Metres(-1)).Find("the moon");
        Assert.Equal([ErrorCodes.UnreadableStatement, ErrorCodes.UnreadableNumber, ErrorCodes.UnreadableNumber, ErrorCodes.NotPositive, ErrorCodes.UnreadableStatement], wrong.Errors.Select(e => e.Code));
        Assert.All(wrong.Errors, e => Assert.Empty(e.Lines));
        Assert.IsType<Refused>(new Solver().Solve(wrong));
    }

    [Fact]
    public void A_problem_is_incomplete_until_it_has_a_figure_and_something_to_find_in_any_order()
    {
        Problem problem = Problem.About("solve a triangle");
        Assert.Equal([ErrorCodes.MissingKey, ErrorCodes.MissingKey], problem.Errors.Select(e => e.Code));
        problem = problem.Find("BC").Given("AB", "3 cm");
        Assert.Equal([ErrorCodes.MissingKey], problem.Errors.Select(e => e.Code));
        Assert.Equal([ErrorCodes.UnknownPoint, ErrorCodes.UnknownPoint], problem.Figure("PQR is a triangle").Errors.Select(e => e.Code));
        Assert.Empty(problem.Figure("ABC is a triangle").Errors);
    }

    [Fact]
    public void The_same_quantity_given_twice_is_found() =>
        Assert.Equal([ErrorCodes.GivenTwice], Mast.Given("QP", "120 m").Errors.Select(e => e.Code));

    [Theory]
    [InlineData(0.1, "0.1 m")]
    [InlineData(120, "120 m")]
    [InlineData(1e21, "1E+21 m")]
    [InlineData(2.5e-7, "2.5E-07 m")]
    public void A_number_stands_for_the_decimal_that_was_typed(double number, string text)
    {
        Assert.Equal(text, Metres(number));
        Problem problem = Problem.About().Figure("ABC is a triangle").Find("BC").Given("AB", Metres(number));
        Assert.Empty(problem.Errors);
        Assert.Equal(number, ((Quantity)problem.Given.Single().Value).Amount.Rational!.Value.ToDouble());
    }

    [Fact]
    public void A_solution_comes_of_a_built_problem() => Assert.IsType<Solved>(new Solver().Solve(Mast));
}
