using Fractions;
using static Explain.Tests.Formulas.Make;

namespace Explain.Tests.Formulas;

public sealed class LinearEquationTests
{
    private static readonly Expr X = Letter("x");
    private static readonly Expr Y = Letter("y");

    [Fact]
    public void Like_terms_are_collected_first() => Lines(
        new((2 * X + 16) + (X + 22) + (X + 22), 180),
        "2 × x + 16 + x + 22 + x + 22 = 180", "4 × x + 60 = 180", "4 × x = 120", "x = 30");

    [Fact]
    public void Degrees_that_all_terms_have_are_left_out() => Lines(
        new((2 * X + 16) * Deg("1") + (X + 22) * Deg("1") + (X + 22) * Deg("1"), Deg("180")),
        "(2 × x + 16) × 1° + (x + 22) × 1° + (x + 22) × 1° = 180°", "4 × x + 60 = 180", "4 × x = 120", "x = 30");

    [Fact]
    public void An_angle_keeps_its_degrees() => Lines(
        new(2 * X + Deg("40"), Deg("180")), "2 × x + 40° = 180°", "2 × x = 140°", "x = 70°");

    [Fact]
    public void The_letter_goes_where_it_is_more() => Lines(
        new(142 - 3 * X, X + 22),
        "142 − 3 × x = x + 22", "x + 22 = 142 − 3 × x", "4 × x + 22 = 142", "4 × x = 120", "x = 30");

    [Fact]
    public void Minus_is_added_and_a_part_is_multiplied() => Lines(
        new(X / 2 - 7, 5), "x ÷ 2 − 7 = 5", "1/2 × x − 7 = 5", "1/2 × x = 12", "x = 24");

    [Fact]
    public void Brackets_with_a_factor_are_multiplied_out() => Lines(
        new(3 * (X + 2), 2 * X + 10), "3 × (x + 2) = 2 × x + 10", "3 × x + 6 = 2 × x + 10", "x + 6 = 10", "x = 4");

    [Fact]
    public void Another_letter_stays() => Lines(
        new(2 * X + 4 * Y, 180), "2 × x + 4 × y = 180", "2 × x = 180 − 4 × y", "x = 90 − 2 × y");

    [Fact]
    public void What_has_no_one_solution_is_refused()
    {
        Symbol x = Symbol(X);
        Assert.Null(LinearEquation.Solve(new(X + 1, X + 2), x));
        Assert.Null(LinearEquation.Solve(new(X, X), x));
        Assert.Null(LinearEquation.Solve(new(X * X, 4), x));
        Assert.Null(LinearEquation.Solve(new(Sin(X), 0), x));
        Assert.Null(LinearEquation.Solve(new(2 * X * Deg("1") + Y, X + Deg("1")), x));
    }

    [Fact]
    public void Random_equations_are_solved_and_every_line_holds()
    {
        Random random = new(5);
        for (int i = 0; i < 500; i++)
        {
            Equation equation = new(Side(random), Side(random));
            if (LinearEquation.Solve(equation, Symbol(X)) is not { } solved) continue;
            foreach (EquationLine line in solved.Lines)
                Assert.Equal(0, Evaluator.Compare(line.Says.Left.Replace(Symbol(X), solved.Formula), line.Says.Right.Replace(Symbol(X), solved.Formula)));
        }
    }

    private static Expr Side(Random random) => Enumerable.Range(0, random.Next(1, 4))
        .Select(_ => random.Next(4) switch
        {
            0 => Number(new Fraction(random.Next(-40, 40), random.Next(1, 4))),
            1 => random.Next(1, 5) * (X + random.Next(30)),
            2 => (random.Next(1, 9) * X - random.Next(30)) / random.Next(1, 4),
            _ => X,
        })
        .Aggregate((a, b) => random.Next(2) == 0 ? a + b : a - b);

    private static void Lines(Equation equation, params string[] lines) =>
        Assert.Equal(lines, LinearEquation.Solve(equation, Symbol(X))!.Lines.Select(l => Text.Of(l.Says)));
}
