using System.Numerics;
using CsCheck;
using Fractions;

namespace Explain.Tests.Numbers;

public sealed class EnclosureTests
{
    private static readonly int Cases = Effort.Of(20_000, 200_000, 1_000_000);

    private static Enclosure Between(int low, int high) => Enclosure.Between(low, high, 192);

    [Fact]
    public void The_truth_is_inside_for_random_expressions()
    {
        int checkedCases = 0;
        Gen.Int.Sample(
            seed =>
            {
                Random random = new(seed);
                if (new RandomExpression(random).Draw(random.Next(1, 5)) is not var (library, reference)) return;
                Fraction truth = SecondOpinion.ToFraction(reference);
                Fraction error = SecondOpinion.Error * Max(1, truth.Abs());
                if (library.Width > new Fraction(1, 1000)) return;
                Assert.True(library.Low <= truth + error && truth - error <= library.High, $"seed {seed}: {library} without {truth.ToDouble()}");
                Interlocked.Increment(ref checkedCases);
            },
            iter: Cases);
        Assert.True(checkedCases > Cases / 2);
    }

    [Fact]
    public void Thin_enclosures_stay_thin()
    {
        foreach (int tenths in Enumerable.Range(1, 1799))
        {
            Fraction degrees = new(tenths, 10);
            Assert.True(Trigonometry.Sin(degrees, 192).Width <= new Fraction(2, BigInteger.One << 192));
            Enclosure sine = Trigonometry.ArcSin(Enclosure.Of(degrees / 180, 192))!.Value;
            Assert.True(sine.Width <= new Fraction(1, BigInteger.One << 170));
        }
    }

    [Fact]
    public void Pi_has_the_digits_of_the_second_implementation()
    {
        Fraction pi = SecondOpinion.ToFraction(SecondOpinion.Pi);
        foreach (int bits in new[] { 8, 53, 192, 380 }) Assert.True(Trigonometry.Pi(bits).Contains(pi));
        Assert.True(Trigonometry.Pi(5000).Contains(Trigonometry.Pi(6000).Middle));
        Assert.True(Trigonometry.Pi(1536).Overlaps(Trigonometry.Pi(5000)));
    }

    [Fact]
    public void A_wide_sine_holds_its_greatest_and_least_value()
    {
        Enclosure sine = Trigonometry.Sin(Enclosure.Between(new Fraction(123, 2), 118, 192));
        Assert.Equal(1, sine.High);
        Assert.True(sine.Contains(Trigonometry.Sin(new Fraction(123, 2), 192).Low));
        Assert.Equal(-1, Trigonometry.Sin(Between(200, 300)).Low);
        Enclosure whole = Trigonometry.Sin(Between(-1000, 1000));
        Assert.Equal((-1, 1), (whole.Low, whole.High));
        Assert.Equal(1, Trigonometry.Cos(Between(-10, 20)).High);
        Assert.Equal(new Fraction(1, 2), Trigonometry.Sin(Between(30, 80)).Low);
        Assert.Equal(5000, (Trigonometry.Sin(Between(89, 91)) * new Fraction(5000)).High);
    }

    [Fact]
    public void A_tangent_across_a_right_angle_has_no_value()
    {
        Assert.Null(Trigonometry.Tan(Between(80, 100)));
        Assert.Null(Trigonometry.Tan(Between(90, 91)));
        Assert.Null(Trigonometry.Tan(Between(-100, -80)));
        Assert.Null(Trigonometry.Tan((Fraction)270, 192));
        Assert.Equal((-1, 1), (Trigonometry.Tan(Between(135, 225))!.Value.Low, Trigonometry.Tan(Between(135, 225))!.Value.High));
    }

    [Fact]
    public void Wide_values_of_every_function_hold_the_values_of_all_points_inside() => Gen.Select(Gen.Int[-4000, 4000], Gen.Int[0, 1500], Gen.Int[0, 100]).Sample((start, width, part) =>
    {
        Fraction low = new(start, 10), high = low + new Fraction(width, 10), inner = low + (high - low) * part / 100;
        Enclosure box = Enclosure.Between(low, high, 192), point = Enclosure.Of(inner, 192);
        Holds(Trigonometry.Sin(box), Trigonometry.Sin(inner, 192));
        Holds(Trigonometry.Cos(box), Trigonometry.Cos(inner, 192));
        Holds(Trigonometry.ArcTan(box), Trigonometry.ArcTan(point));
        Holds(Enclosure.Power(box, 2), Enclosure.Power(point, 2));
        Holds(Enclosure.Power(box, 3), Enclosure.Power(point, 3));
        Holds(box * (box - Enclosure.Of(3, 192)), point * (point - Enclosure.Of(3, 192)));
        if (Trigonometry.Tan(box) is { } tangent) Holds(tangent, Trigonometry.Tan(inner, 192)!.Value);
        if (Enclosure.Divide(point, box) is { } quotient) Holds(quotient, Enclosure.Of(1, 192));
        if (Enclosure.Sqrt(box) is { } root) Holds(root, Enclosure.Sqrt(point)!.Value);
        Enclosure small = box * new Fraction(1, 600);
        if (Trigonometry.ArcSin(small) is { } sine) Holds(sine, Trigonometry.ArcSin(point * new Fraction(1, 600))!.Value);
        if (Trigonometry.ArcCos(small) is { } cosine) Holds(cosine, Trigonometry.ArcCos(point * new Fraction(1, 600))!.Value);
    }, iter: 2000);

    [Fact]
    public void Outside_their_domain_functions_have_no_value()
    {
        Assert.Null(Enclosure.Sqrt(Between(-1, 4)));
        Assert.Null(Enclosure.Divide(Between(1, 2), Between(-1, 1)));
        Assert.Null(Enclosure.Divide(Between(1, 2), Between(0, 1)));
        Assert.Null(Enclosure.Divide(Between(1, 2), Between(0, 0)));
        Assert.Null(Trigonometry.ArcSin(Between(0, 2)));
        Assert.Null(Trigonometry.ArcCos(Between(-2, 0)));
        Assert.Throws<ArgumentException>(() => Between(2, 1));
    }

    [Fact]
    public void Ends_that_are_exact_stay()
    {
        Assert.Equal(Enclosure.Of(new Fraction(1, 2), 192), Trigonometry.Sin(150, 192));
        Assert.Equal(Enclosure.Of(-1, 192), Trigonometry.Cos(180, 192));
        Assert.Equal(Enclosure.Of(1, 192), Trigonometry.Tan(45, 192));
        Assert.Equal(Enclosure.Of(-1, 192), Trigonometry.Tan(-225, 192));
        Assert.Equal(Enclosure.Of(30, 192), Trigonometry.ArcSin(Enclosure.Of(new Fraction(1, 2), 192)));
        Assert.Equal(Between(-90, 90), Trigonometry.ArcSin(Between(-1, 1)));
        Assert.Equal(Enclosure.Of(180, 192), Trigonometry.ArcCos(Enclosure.Of(-1, 192)));
        Assert.Equal(Enclosure.Of(45, 192), Trigonometry.ArcTan(Enclosure.Of(1, 192)));
        Assert.Equal(Enclosure.Of(12, 192), Enclosure.Sqrt(Enclosure.Of(144, 192)));
        Assert.Equal(Between(0, 9), Enclosure.Power(Between(-2, 3), 2));
        Assert.Equal(Enclosure.Between(0, 9, 0), Enclosure.Power(Enclosure.Between(-2, 3, 0), 2));
        Assert.Equal(Between(-8, 27), Enclosure.Power(Between(-2, 3), 3));
        Assert.Equal(Between(1, 1), Enclosure.Power(Between(-2, 3), 0));
        Assert.Equal(Between(-3, -1), Enclosure.Divide(Between(1, 3), Enclosure.Of(-1, 192)));
    }

    [Fact]
    public void Signs_and_comparisons_are_decided_or_left_open()
    {
        Assert.Equal(1, Between(1, 2).Sign);
        Assert.Equal(-1, Between(-2, -1).Sign);
        Assert.Equal(0, Between(0, 0).Sign);
        Assert.Null(Between(0, 1).Sign);
        Assert.Null(Between(-1, 0).Sign);
        Assert.True(Enclosure.Less(Between(1, 2), Between(3, 4)));
        Assert.False(Enclosure.Less(Between(3, 4), Between(1, 3)));
        Assert.Null(Enclosure.Less(Between(1, 3), Between(2, 4)));
        Assert.True(Between(1, 3).Overlaps(Between(3, 4)));
        Assert.True(Between(3, 4).Overlaps(Between(1, 3)));
        Assert.False(Between(1, 2).Overlaps(Between(3, 4)));
        Assert.Equal((new Fraction(5, 2), (Fraction)1), (Between(2, 3).Middle, Between(2, 3).Width));
        Assert.Equal(Between(1, 4), Enclosure.Hull(Between(1, 2), Between(3, 4)));
    }

    [Fact]
    public void Whole_numbers_are_divided_in_the_stated_direction()
    {
        foreach (int a in Enumerable.Range(-12, 25))
        {
            foreach (int b in Enumerable.Range(-5, 11).Where(b => b != 0))
            {
                Assert.Equal((BigInteger)Math.Floor((double)a / b), Whole.FloorDivide(a, b));
                Assert.Equal((BigInteger)Math.Ceiling((double)a / b), Whole.CeilingDivide(a, b));
            }
        }
    }

    [Fact]
    public void Precisions_mix()
    {
        Enclosure coarse = Enclosure.Of(new Fraction(1, 3), 8), fine = Enclosure.Of(new Fraction(1, 3), 192);
        Assert.Equal(192, (coarse + fine).Bits);
        Assert.True((coarse + fine).Contains(new Fraction(2, 3)));
        Assert.True((coarse * fine).Contains(new Fraction(1, 9)));
        Assert.True(Enclosure.Divide(fine, coarse)!.Value.Contains(1));
        Assert.Equal(coarse, fine.At(8));
        Assert.Equal(0, default(Enclosure).Sign);
    }

    private static void Holds(Enclosure wide, Enclosure thin) =>
        Assert.True(wide.Low <= thin.High && thin.Low <= wide.High && wide.Overlaps(thin), $"{wide} without {thin}");

    private static Fraction Max(Fraction a, Fraction b) => a > b ? a : b;
}
