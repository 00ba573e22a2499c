using Fractions;
using static Explain.Tests.Formulas.Make;

namespace Explain.Tests.Formulas;

/// <summary>Equalities that hold in every triangle, with drawn numbers, and the same ones missed by 1e-40.</summary>
public sealed class ZeroTestTests
{
    private static readonly int Triangles = Effort.Of(40, 400);

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

    [Fact]
    public void Two_points_seen_from_both_ends_of_a_baseline()
    {
        (Expr c, Expr atA, Expr atB, Expr second, Expr other) = (M("100.5"), Deg("40.3"), Deg("80.2"), Deg("75.7"), Deg("45.1"));
        (Expr p, Expr q) = (c * Sin(atB) / Sin(atA + atB), c * Sin(other) / Sin(second + other));
        Expr between = Root(Square(p) + Square(q) - 2 * p * q * Cos(second - atA));
        Hold([(Root(Square(p * Cos(atA) - q * Cos(second)) + Square(p * Sin(atA) - q * Sin(second))), between),
            (Opposite(p, q, between) + Opposite(q, p, between) + second - atA, Deg("180"))], "two points");
    }

    [Fact]
    public void Two_triangles_on_a_diagonal()
    {
        (Expr a, Expr b, Expr c, Expr d, Expr e) = (M("7.1"), M("8.3"), M("9.2"), M("6.4"), M("10.5"));
        (Expr first, Expr second) = (Opposite(b, a, e) + Opposite(c, d, e), Opposite(a, b, e) + Opposite(d, c, e));
        Expr diagonal = Root(Square(a) + Square(d) - 2 * a * d * Cos(first));
        Hold([(diagonal, Root(Square(b) + Square(c) - 2 * b * c * Cos(second))),
            (first + second + Opposite(e, a, b) + Opposite(e, c, d), Deg("360")),
            (Heron(a, b, e) + Heron(c, d, e), a * d * Sin(first) / 2 + b * c * Sin(second) / 2)], "diagonal");
    }

    private static Expr Opposite(Expr a, Expr b, Expr c) => ArcCos((Square(b) + Square(c) - Square(a)) / (2 * b * c));

    private static Expr Heron(Expr a, Expr b, Expr c)
    {
        Expr half = (a + b + c) / 2;
        return Root(half * (half - a) * (half - b) * (half - c));
    }

    private static (Expr, Expr)[] TwoSides(Expr a, Expr b, Expr angle)
    {
        Expr c = Root(Square(a) + Square(b) - 2 * a * b * Cos(angle));
        (Expr atA, Expr atB) = (Opposite(a, b, c), Opposite(b, a, c));
        return [(atA + atB + angle, Deg("180")), (a / Sin(atA), b / Sin(atB)), (c, a * Cos(atB) + b * Cos(atA)),
            (Heron(a, b, c), a * b * Sin(angle) / 2)];
    }

    private static (Expr, Expr)[] ThreeSides(int x, int y, int z)
    {
        (Expr a, Expr b, Expr c) = (M($"{x}.5"), M($"{y}.5"), M($"{z}.5"));
        (Expr atA, Expr atB, Expr atC) = (Opposite(a, b, c), Opposite(b, a, c), Opposite(c, a, b));
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
