using System.Numerics;
using CsCheck;
using Fractions;

namespace Explain.Tests.Numbers;

public sealed class ValueTests
{
    [Fact]
    public void The_double_is_the_nearest_one()
    {
        // Two triangles with 38°, 2.5 m and 1.8 m: AB = 2.5 cos 38° ± √(1.8² − (2.5 sin 38°)²).
        Enclosure foot = Trigonometry.Cos(38, 192) * new Fraction(5, 2), height = Trigonometry.Sin(38, 192) * new Fraction(5, 2);
        Enclosure rest = Enclosure.Sqrt(Enclosure.Of(new Fraction(324, 100), 192) - Enclosure.Power(height, 2))!.Value;
        Assert.Equal(2.903303865276367, new Value(null, foot + rest, Unit.Metre).Number);
        Assert.Equal(1.0367499027572424, new Value(null, foot - rest, Unit.Metre).Number);
    }

    [Fact]
    public void Doubles_of_exact_values_are_nearest() => Gen.Select(Gen.Int[1, 100_000], Gen.Int[1, 1000], Gen.Int[1, 99]).Sample((top, bottom, radicand) =>
    {
        Exact exact = Exact.Multiply(Exact.Of(new Fraction(top, bottom)), Exact.Root(Exact.Of(radicand))!)!;
        double nearest = Value.Of(exact, Unit.Metre).Number;
        Exact upper = Between(nearest, Math.BitIncrement(nearest)), lower = Between(nearest, Math.BitDecrement(nearest));
        Assert.True(lower.CompareTo(exact) <= 0 && exact.CompareTo(upper) <= 0);
    }, iter: 2000);

    [Fact]
    public void Every_double_is_nearest_to_itself_and_ties_go_to_the_even_one() => Gen.Double.Sample(
        number =>
        {
            if (!double.IsFinite(number) || double.IsInfinity(Math.BitIncrement(number))) return;
            double next = Math.BitIncrement(number);
            Fraction exact = Exactly(number), middle = (exact + Exactly(next)) / 2, hair = (Exactly(next) - exact) / 1000;
            Assert.Equal(number, Doubles.Nearest(exact));
            Assert.Equal((BitConverter.DoubleToInt64Bits(number) & 1) == 0 ? number : next, Doubles.Nearest(middle));
            Assert.Equal(number, Doubles.Nearest(middle - hair));
            Assert.Equal(next, Doubles.Nearest(middle + hair));
        },
        iter: 20_000);

    [Fact]
    public void The_smallest_doubles_are_nearest_too() => Gen.Int[0, 5000].Sample(eighths =>
    {
        // Multiples of an eighth of the smallest double: ties and near-ties below the normal range.
        Fraction value = new(eighths, BigInteger.One << 1077);
        double expected = Math.Round(eighths / 8.0, MidpointRounding.ToEven) * double.Epsilon;
        Assert.Equal(expected, Doubles.Nearest(value));
        Assert.Equal(-expected, Doubles.Nearest(-value));
        Fraction hair = new(1, BigInteger.One << 1300);
        Assert.Equal(Math.Floor((eighths + 4) / 8.0) * double.Epsilon, Doubles.Nearest(value + hair));
    }, iter: 10_000);

    [Fact]
    public void An_open_enclosure_gives_the_double_nearest_to_its_middle()
    {
        Assert.Equal(1.5, new Value(null, Enclosure.Between(1, 2, 192), Unit.Metre).Number);
        Assert.Equal(0, Value.Of(Exact.Zero, Unit.None).Number);
        Assert.Equal(-0.1, Value.Of(Exact.Of(new Fraction(-1, 10)), Unit.None).Number);
    }

    [Fact]
    public void Values_are_equal_by_content()
    {
        Assert.Equal(Value.Of(Exact.Of(2), Unit.Metre), Value.Of(Exact.Of(2), Unit.Metre));
        Assert.NotEqual(Value.Of(Exact.Of(2), Unit.Metre), Value.Of(Exact.Of(2), Unit.Foot));
        Assert.Equal(Value.Of(Exact.Of(2), Unit.Metre), Value.Of(Exact.Of(2), Unit.Metre).In(Unit.Metre));
    }

    [Fact]
    public void The_decimal_with_the_fewest_places_in_an_enclosure_is_found()
    {
        Assert.Equal(new Fraction(1, 2), Decimals.CandidateIn(Enclosure.Between(new Fraction(47, 100), new Fraction(52, 100), 192), 15));
        Assert.Equal(3, Decimals.CandidateIn(Enclosure.Between(new Fraction(5, 2), new Fraction(7, 2), 192), 15));
        Assert.Null(Decimals.CandidateIn(Enclosure.Of(new Fraction(1, 3), 192), 15));
        Assert.Equal(new Fraction(-1, 4), Decimals.CandidateIn(Enclosure.Of(new Fraction(-1, 4), 192), 2));
        Assert.Null(Decimals.CandidateIn(Enclosure.Of(new Fraction(-1, 4), 192), 1));
    }

    private static Exact Between(double a, double b) => Exact.Of((Exactly(a) + Exactly(b)) / 2);

    /// <summary>Read from the bits: Fraction.FromDouble is wrong below the normal range.</summary>
    private static Fraction Exactly(double number)
    {
        long bits = BitConverter.DoubleToInt64Bits(number), mantissa = bits & ((1L << 52) - 1);
        int exponent = (int)(bits >> 52 & 0x7FF);
        BigInteger size = exponent == 0 ? mantissa : mantissa | 1L << 52;
        return new Fraction((bits < 0 ? -size : size) << int.Max(exponent, 1), BigInteger.One << 1075);
    }
}
