using System.Numerics;
using Fractions;

namespace Explain.Tests.Numbers;

/// <summary>
/// The table against theory. By Galois theory cos(360° k/n), k and n without common divisor, is a sum of square roots of rationals exactly
/// when u² = ±1 modulo n for every u prime to n. The tangent of a is such a sum exactly when sine and cosine of 2a are, and the square of
/// any of the three exactly when the cosine of 2a is.
/// </summary>
public sealed class SpecialAnglesTests
{
    private const int Steps = 8;

    public static IEnumerable<Fraction> Eighths() => Enumerable.Range(-360 * Steps, 3 * 360 * Steps).Select(i => new Fraction(i, Steps));

    private static bool CosineIsSum(Fraction degrees)
    {
        int n = (int)(degrees / 360).Denominator;
        return Enumerable.Range(1, n).Where(u => BigInteger.GreatestCommonDivisor(u, n).IsOne)
            .All(u => u * u % n == 1 % n || (u * u + 1) % n == 0);
    }

    [Fact]
    public void Exactly_the_angles_of_the_theory_have_an_exact_form()
    {
        foreach (Fraction degrees in Eighths())
        {
            bool known = CosineIsSum(2 * degrees), sum = CosineIsSum(degrees);
            Check(SpecialAngles.Cos(degrees), known, sum, degrees);
            Check(SpecialAngles.Sin(degrees), known, CosineIsSum(90 - degrees), degrees);
            Check(SpecialAngles.Tan(degrees), known && (degrees - 90) % 180 != 0, known && CosineIsSum(90 - 2 * degrees), degrees);
        }
    }

    [Fact]
    public void The_school_angles_are_those_of_the_table()
    {
        Assert.Equal([15, 18, 30, 45, 54, 60, 75], Sums(SpecialAngles.Sin));
        Assert.Equal([15, 30, 36, 45, 60, 72, 75], Sums(SpecialAngles.Cos));
        Assert.Equal([7.5, 15, 22.5, 30, 37.5, 45, 52.5, 60, 67.5, 75, 82.5], Sums(SpecialAngles.Tan));
    }

    [Fact]
    public void Of_regular_polygons_six_have_an_inscribed_radius_without_nested_root()
    {
        IEnumerable<int> plain = Enumerable.Range(3, 58)
            .Where(n => SpecialAngles.Tan(90 - new Fraction(180, n)) is { IsNested: false });
        Assert.Equal([3, 4, 6, 8, 12, 24], plain);
    }

    [Fact]
    public void Values_agree_with_the_series_and_with_each_other()
    {
        foreach (Fraction a in Eighths())
        {
            if (SpecialAngles.Sin(a) is not { } sine) continue;
            Exact cosine = SpecialAngles.Cos(a)!;
            Assert.True(sine.Enclose(1536).Overlaps(Trigonometry.Sin(a, 1536)));
            Assert.True(cosine.Enclose(1536).Overlaps(Trigonometry.Cos(a, 1536)));
            Assert.Equal(Exact.One, Exact.Add(Exact.Power(sine, 2)!, Exact.Power(cosine, 2)!));
            if (SpecialAngles.Tan(a) is not { } tangent) continue;
            Assert.True(tangent.Enclose(1536).Overlaps(Trigonometry.Tan(a, 1536)!.Value));
            Assert.Equal(sine, Exact.Multiply(tangent, cosine));
        }
    }

    [Fact]
    public void The_sum_formulas_hold()
    {
        int held = 0;
        for (int i = 0; i < 24; i++)
        {
            for (int j = 0; j < 24; j++)
            {
                (Fraction a, Fraction b) = (15 * i, 15 * j);
                Exact sum = Exact.Add(Product(SpecialAngles.Sin(a), SpecialAngles.Cos(b)), Product(SpecialAngles.Cos(a), SpecialAngles.Sin(b)))!;
                Assert.Equal(sum, SpecialAngles.Sin(a + b));
                Exact difference = Exact.Subtract(Product(SpecialAngles.Cos(a), SpecialAngles.Cos(b)), Product(SpecialAngles.Sin(a), SpecialAngles.Sin(b)))!;
                Assert.Equal(difference, SpecialAngles.Cos(a + b));
                held++;
            }
        }

        Assert.Equal(576, held);
        for (int i = 0; i < 20; i++)
        {
            // Nested roots: sin 2a = 2 sin a cos a, cos 2a = 1 − 2 sin² a.
            Fraction a = 18 * i;
            Assert.Equal(SpecialAngles.Sin(2 * a), Exact.Multiply(Exact.Of(2), Product(SpecialAngles.Sin(a), SpecialAngles.Cos(a))));
            Exact square = Product(SpecialAngles.Sin(a), SpecialAngles.Sin(a));
            Assert.Equal(SpecialAngles.Cos(2 * a), Exact.Subtract(Exact.One, Exact.Multiply(Exact.Of(2), square)!));
        }
    }

    [Fact]
    public void Angles_come_back_from_their_values()
    {
        foreach (Fraction a in Eighths().Where(d => d >= -90 && d <= 180))
        {
            if (a <= 90 && SpecialAngles.Sin(a) is { } sine) Assert.Equal(a, SpecialAngles.ArcSin(sine));
            if (a >= 0 && SpecialAngles.Cos(a) is { } cosine) Assert.Equal(a, SpecialAngles.ArcCos(cosine));
            if (a < 90 && SpecialAngles.Tan(a) is { } tangent) Assert.Equal(a, SpecialAngles.ArcTan(tangent));
        }

        Assert.Null(SpecialAngles.ArcSin(Exact.Of(2)));
        Assert.Null(SpecialAngles.ArcCos(Exact.Of(new Fraction(1, 3))));
        Assert.Null(SpecialAngles.ArcTan(Exact.Pi));
    }

    [Theory]
    [InlineData(22.5, "√(2 − √2)/2")]
    [InlineData(36, "√(10 − 2√5)/4")]
    [InlineData(72, "√(10 + 2√5)/4")]
    [InlineData(15, "(√6 − √2)/4")]
    [InlineData(18, "(√5 − 1)/4")]
    [InlineData(7.5, "√(8 − 2√6 − 2√2)/4")]
    [InlineData(60, "√3/2")]
    [InlineData(240, "−√3/2")]
    [InlineData(-54, "−(√5 + 1)/4")]
    public void Sines_are_written_as_in_books(double degrees, string expected) =>
        Assert.Equal(expected, SpecialAngles.Sin(Fraction.FromDouble(degrees))!.ToString());

    [Theory]
    [InlineData(7.5, "√6 − √3 + √2 − 2")]
    [InlineData(15, "2 − √3")]
    [InlineData(22.5, "√2 − 1")]
    [InlineData(37.5, "√6 + √3 − √2 − 2")]
    [InlineData(18, "√(25 − 10√5)/5")]
    [InlineData(36, "√(5 − 2√5)")]
    [InlineData(54, "√(25 + 10√5)/5")]
    [InlineData(72, "√(5 + 2√5)")]
    [InlineData(105, "−(√3 + 2)")]
    public void Tangents_are_written_as_in_books(double degrees, string expected) =>
        Assert.Equal(expected, SpecialAngles.Tan(Fraction.FromDouble(degrees))!.ToString());

    private static void Check(Exact? value, bool known, bool sum, Fraction degrees)
    {
        Assert.True(value is not null == known, $"{degrees}");
        if (value is not null) Assert.True(!value.IsNested == sum, $"{degrees}");
    }

    private static Exact Product(Exact? a, Exact? b) => Exact.Multiply(a!, b!)!;

    private static IEnumerable<double> Sums(Func<Fraction, Exact?> function) => Enumerable.Range(1, 179)
        .Where(i => function(new Fraction(i, 2)) is { IsNested: false }).Select(i => i / 2.0);
}
