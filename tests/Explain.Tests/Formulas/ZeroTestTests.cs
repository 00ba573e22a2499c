using Fractions;
using static Explain.Tests.Formulas.Make;

namespace Explain.Tests.Formulas;

/// <summary>Equalities that hold in every triangle, with drawn numbers, and the same ones missed by 1e-40.</summary>
public sealed class ZeroTestTests
{
    private static readonly int Triangles = Environment.GetEnvironmentVariable("EXPLAIN_FULL") == "1" ? 400 : 40;

    private static readonly Expr Miss = 1 / Number(new Fraction(System.Numerics.BigInteger.Pow(10, 40)));

    [Fact]
    public void Equalities_of_triangles_with_an_angle_of_up_to_two_decimals_are_proved()
    {
        Random random = new(20250611);
        for (int i = 0; i < Triangles; i++)
        {
            (Expr a, Expr b) = (Length(random), Length(random));
            Expr angle = new Quantity(Exact.Of(new Fraction(random.Next(100, 17900), 100)), Unit.Degree);
            Hold(TwoSides(a, b, angle), $"{a} {b} {angle}");
        }
    }

    [Fact]
    public void Equalities_of_triangles_with_three_sides_are_proved()
    {
        Random random = new(7);
        for (int i = 0; i < Triangles; i++)
        {
            (int a, int b) = (random.Next(20, 90), random.Next(20, 90));
            int c = random.Next(int.Abs(a - b) + 1, a + b);
            Hold(ThreeSides(a, b, c), $"{a} {b} {c}");
        }
    }

    [Fact]
    public void Equalities_of_triangles_with_two_angles_are_proved()
    {
        Random random = new(11);
        for (int i = 0; i < Triangles; i++)
        {
            int first = random.Next(10, 1500), second = random.Next(10, 1790 - first);
            (Expr a, Expr b) = (Tenths(first), Tenths(second));
            Expr c = Deg("180") - a - b, side = Length(random);
            Hold([(side / (1 / Tan(a) + 1 / Tan(b)), side * Sin(a) * Sin(b) / Sin(a + b)),
                (side * Sin(a) / Sin(c) * Cos(b) + side * Sin(b) / Sin(c) * Cos(a), side),
                (Tan(a) + Tan(b) + Tan(c), Tan(a) * Tan(b) * Tan(c)),
                (ArcSin(Sin(a / 2)) * 2, a)], $"{first} {second}");
        }
    }

    [Theory]
    [InlineData(3, 1)]
    [InlineData(5, 7)]
    [InlineData(7, 13)]
    [InlineData(9, 2)]
    [InlineData(12, 33)]
    [InlineData(35, 4)]
    public void Cosines_equally_spaced_round_the_turn_add_up_to_0(int n, int start)
    {
        Expr sum = Enumerable.Range(0, n).Select(k => Cos(new Quantity(Exact.Of(new Fraction(360 * k, n) + start), Unit.Degree))).Aggregate((x, y) => x + y);
        Assert.Equal(0, Evaluator.Sign(sum));
        Assert.Equal(1, Evaluator.Sign(sum + Miss));
    }

    [Fact]
    public void Areas_with_pi_are_compared()
    {
        Expr chord = 2 * M("7") * Sin(Deg("31")), radius = chord / (2 * Sin(Deg("31")));
        Assert.Equal(0, Evaluator.Compare(Pi * Square(radius) * 62 / 360, Pi * Square(M("7")) * Number(new Fraction(31, 180))));
        Assert.Equal(1, Evaluator.Compare(Pi * Square(radius), Square(M("7")) * Number("3.1415926535897932384626433832795028841971")));
        Assert.Equal(0, Evaluator.Compare(1 / Pi * Square(radius), Square(M("7")) / Pi));
    }

    private static (Expr, Expr)[] TwoSides(Expr a, Expr b, Expr angle)
    {
        Expr c = Root(Square(a) + Square(b) - 2 * a * b * Cos(angle));
        Expr atA = ArcCos((Square(b) + Square(c) - Square(a)) / (2 * b * c)), atB = ArcCos((Square(a) + Square(c) - Square(b)) / (2 * a * c));
        Expr half = (a + b + c) / 2;
        return [(atA + atB + angle, Deg("180")), (a / Sin(atA), b / Sin(atB)), (c, a * Cos(atB) + b * Cos(atA)),
            (Root(half * (half - a) * (half - b) * (half - c)), a * b * Sin(angle) / 2)];
    }

    private static (Expr, Expr)[] ThreeSides(int x, int y, int z)
    {
        (Expr a, Expr b, Expr c) = (M($"{x}.5"), M($"{y}.5"), M($"{z}.5"));
        Expr atA = ArcCos((Square(b) + Square(c) - Square(a)) / (2 * b * c)), atB = ArcCos((Square(a) + Square(c) - Square(b)) / (2 * a * c));
        Expr atC = ArcCos((Square(a) + Square(b) - Square(c)) / (2 * a * b));
        return [(atA + atB + atC, Deg("180")), (a / Sin(atA), c / Sin(atC)), (b, a * Cos(atC) + c * Cos(atA)),
            (Square(Sin(atA / 2)) * 4 * b * c, (a + b - c) * (a + c - b))];
    }

    private static void Hold((Expr Left, Expr Right)[] equalities, string drawn)
    {
        foreach ((Expr left, Expr right) in equalities)
        {
            Assert.True(Evaluator.Compare(left, right) == 0, drawn);
            Assert.True(Evaluator.Compare(left, right * (1 + Miss)) is 1 or -1, drawn);
        }
    }

    private static Expr Length(Random random) => M($"{random.Next(1, 60)}.{random.Next(10)}1");

    private static Expr Tenths(int tenths) => new Quantity(Exact.Of(new Fraction(tenths, 10)), Unit.Degree);
}
