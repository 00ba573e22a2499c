using Fractions;
using static Explain.Tests.Formulas.Make;

namespace Explain.Tests.Formulas;

/// <summary>Drawn formulas: the evaluator against doubles, derivatives against quotients of differences.</summary>
public sealed class RandomFormulaTests
{
    private static readonly int Formulas = Effort.Of(2_000, 20_000);

    private static readonly Dictionary<Symbol, double> Nothing = [];

    [Fact]
    public void The_evaluator_agrees_with_doubles_and_keeps_its_promise()
    {
        Random random = new(31);
        int values = 0, exact = 0;
        for (int i = 0; i < Formulas; i++)
        {
            Expr formula = Number(random, 4, () => Make.Number(new Fraction(random.Next(-20, 60), random.Next(1, 5))));
            double rough = Rough.Of(formula, Nothing);
            if (Evaluator.Evaluate(formula) is not Evaluated { Value: var value }) continue;
            values++;
            exact += value.Exact is null ? 0 : 1;
            Assert.True(value.Exact is { } form ? form.Enclose(192).Overlaps(value.True) : Decimals.CandidateIn(value.True, 15) is null, Text.Of(formula));
            if (IsTame(formula, Nothing)) Assert.True(Math.Abs(value.Number - rough) <= 1e-6 * Math.Max(1, Math.Abs(rough)), $"{Text.Of(formula)}: {value.Number} {rough}");
        }

        Assert.True(values > Formulas / 4 && exact > Formulas / 20, $"{values} {exact}");
    }

    [Fact]
    public void Derivatives_agree_with_quotients_of_differences()
    {
        Random random = new(32);
        Symbol x = Symbol(Letter("x"));
        int compared = 0;
        for (int i = 0; i < Formulas; i++)
        {
            Expr formula = Number(random, 3, () => random.Next(2) == 0 ? x : Make.Number(random.Next(1, 9)));
            double at = 0.2 + random.NextDouble(), step = 1e-5;
            double quotient = (Of(at + step) - Of(at - step)) / (2 * step), check = (Of(at + 2 * step) - Of(at - 2 * step)) / (4 * step);
            if (!IsTame(formula, new Dictionary<Symbol, double> { [x] = at }) || !double.IsFinite(quotient) || Math.Abs(quotient - check) > 1e-5 * Math.Max(1, Math.Abs(quotient)) || Math.Abs(Of(at)) > 1e4) continue;
            double derivative = Rough.Of(new Differentiation(x, new Interner()).Of(formula), new Dictionary<Symbol, double> { [x] = at });
            Assert.True(Math.Abs(derivative - quotient) <= 1e-4 * Math.Max(1, Math.Abs(quotient)), $"{Text.Of(formula)} at {at}: {derivative} {quotient}");
            compared++;

            double Of(double value) => Rough.Of(formula, new Dictionary<Symbol, double> { [x] = value });
        }

        Assert.True(compared > Formulas / 3, $"{compared}");
    }

    /// <summary>Far from where a double loses all its figures: no tangent, divisor, root or inverse of a number that may be anywhere.</summary>
    private static bool IsTame(Expr formula, Dictionary<Symbol, double> at) => formula.Subtrees().All(e => e switch
    {
        Quotient(_, var divisor) => Math.Abs(Rough.Of(divisor, at)) > 1e-3,
        Root(var under) => Rough.Of(under, at) > 1e-3,
        Apply(Function.Tangent, var angle) => Math.Abs(Math.Cos(Rough.Of(angle, at) * Math.PI / 180)) > 1e-3,
        Apply(Function.ArcSine or Function.ArcCosine, var ratio) => Math.Abs(Rough.Of(ratio, at)) < 0.999,
        _ => Math.Abs(Rough.Of(e, at)) < 1e6,
    });

    private static Expr Number(Random random, int depth, Func<Expr> leaf)
    {
        if (depth == 0) return leaf();
        return random.Next(10) switch
        {
            0 => Next() + Next(),
            1 => Next() - Next(),
            2 => Next() * Next(),
            3 => Next() / Next(),
            4 => Square(Next()),
            5 => Root(Next()),
            6 => Sin(Angle()),
            7 => Cos(Angle()),
            8 => Tan(Angle()),
            _ => -Next(),
        };

        Expr Next() => Number(random, depth - 1, leaf);

        Expr Angle() => random.Next(4) switch
        {
            0 => ArcCos(Next()),
            1 => ArcSin(Next()) + Deg("30"),
            2 => ArcTan(Next()) / 2,
            _ => Next() * Deg("15"),
        };
    }
}
