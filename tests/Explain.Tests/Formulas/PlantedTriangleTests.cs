using Fractions;
using static Explain.Tests.Formulas.Make;

namespace Explain.Tests.Formulas;

/// <summary>Triangles planted exactly at a border between cases, and 1e-12 either side.</summary>
public sealed class PlantedTriangleTests
{
    private const int Draws = 50;

    private static readonly Expr Beside = Of("0.000000000001", Unit.Metre);

    /// <summary>A side that just reaches: a = b sin A.</summary>
    [Theory]
    [InlineData("30", "0.25")]
    [InlineData("150", "0.25")]
    [InlineData("45", "0.5")]
    [InlineData("60", "0.75")]
    public void Tangent(string angle, string squareOfSine)
    {
        Random random = new(1);
        for (int i = 0; i < Draws; i++)
        {
            Expr b = Drawn(random);
            Border(b * Root(Number(squareOfSine)), b * Sin(Deg(angle)));
        }
    }

    /// <summary>The same at an angle whose sine has no exact form, the side given by another route.</summary>
    [Fact]
    public void Tangent_at_any_angle()
    {
        Random random = new(2);
        for (int i = 0; i < Draws; i++)
        {
            (Expr b, Expr angle) = (Drawn(random), new Quantity(Exact.Of(new Fraction(random.Next(10, 1700), 10)), Unit.Degree));
            Border(2 * b * Sin(angle / 2) * Cos(angle / 2), b * Sin(angle));
        }
    }

    [Fact]
    public void Right_angled()
    {
        Random random = new(3);
        for (int i = 0; i < Draws; i++)
        {
            (Expr a, Expr b) = (Drawn(random), Drawn(random));
            Border(Root(Square(a) + Square(b)), Root(Square(a + b) - 2 * a * b));
            Assert.Equal(Exact.Of(90), Assert.IsType<Evaluated>(Evaluator.Evaluate(ArcTan(a / b) + ArcTan(b / a))).Value.Exact);
        }
    }

    [Fact]
    public void Flat()
    {
        Random random = new(4);
        for (int i = 0; i < Draws; i++)
        {
            (Expr a, Expr b) = (Drawn(random), Drawn(random));
            Border(a + b, Root(Square(a) + Square(b) + 2 * a * b));
            Assert.Equal(Exact.Of(180), Assert.IsType<Evaluated>(Evaluator.Evaluate(Opposite(a + b, a, b))).Value.Exact);
            Assert.IsType<OutsideDomain>(Evaluator.Evaluate(Opposite(a + b + Beside, a, b)));
            Assert.Equal(-1, Evaluator.Compare(Opposite(a + b - Beside, a, b), Deg("180")));
        }
    }

    private static Expr Opposite(Expr a, Expr b, Expr c) => ArcCos((Square(b) + Square(c) - Square(a)) / (2 * b * c));

    private static void Border(Expr side, Expr border)
    {
        Assert.Equal(0, Evaluator.Compare(side, border));
        Assert.Equal(1, Evaluator.Compare(side + Beside, border));
        Assert.Equal(-1, Evaluator.Compare(side - Beside, border));
    }

    private static Expr Drawn(Random random) => new Quantity(Exact.Of(new Fraction(random.Next(100, 9000), 100)), Unit.Metre);
}
