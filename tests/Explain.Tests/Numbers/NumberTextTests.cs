using System.Numerics;
using CsCheck;
using Fractions;

namespace Explain.Tests.Numbers;

public sealed class NumberTextTests
{
    private static readonly int Cases = Effort.Of(20_000, 200_000, 1_000_000);

    private static readonly NumberStyle Measure = NumberStyle.For(Unit.Metre);

    private static readonly NumberStyle Ratio = NumberStyle.For(Unit.None);

    private static Value Of(string exact) => Value.Of(ExactReader.Read(exact), Unit.Metre);

    private static Rounding Figures(int figures) => new(RoundingKind.SignificantFigures, figures);

    private static Rounding Places(int places) => new(RoundingKind.DecimalPlaces, places);

    [Fact]
    public void Problems_that_land_on_the_boundary_are_exact()
    {
        Exact Of(string decimals) => ExactReader.Read(decimals);
        (Exact? Value, string Digits)[] rows =
        [
            (Exact.Multiply(Exact.Of(12), SpecialAngles.Tan(45)!), "12"),
            (Exact.Multiply(Exact.Of(10), SpecialAngles.Sin(30)!), "5"),
            (Exact.Multiply(Of("2.3"), Exact.Of(100)), "230"),
            (Exact.Multiply(Of("0.57"), Exact.Of(100)), "57"),
        ];
        foreach ((Exact? value, string digits) in rows)
            Assert.Equal(new Shown(digits, Continues: false, IsExact: true), NumberText.Cut(Explain.Value.Of(value!, Unit.Metre), Measure));
    }

    [Theory]
    [InlineData("√2", "1.414")]
    [InlineData("−√2", "−1.414")]
    [InlineData("1/3", "0.3333")]
    [InlineData("−2/3", "−0.6666")]
    [InlineData("√2/100", "0.01414")]
    [InlineData("1000√2", "1414.213")]
    [InlineData("12 − √3/1000000", "11.9999982")]
    [InlineData("12 + √3/1000000", "12.0000017")]
    [InlineData("√2/1000000000000 + 12", "12.000000000")]
    [InlineData("12 − √2/1000000000000", "11.999999999")]
    [InlineData("√2/100000000 + 12", "12.000000014")]
    [InlineData("√2/1000000000000", "0.000000000001414")]
    [InlineData("0.9091 − √2/10000000", "0.90909985")]
    [InlineData("909091/1000000 + √2/10000000", "0.9090911")]
    public void Values_that_go_on_are_cut(string exact, string digits) =>
        Assert.Equal(new Shown(digits, Continues: true, IsExact: false), NumberText.Cut(Of(exact), Measure));

    [Theory]
    [InlineData("0", "0")]
    [InlineData("−0.0625", "−0.0625")]
    [InlineData("5/1024", "0.0048828125")]
    [InlineData("123456789", "123456789")]
    [InlineData("11.999", "11.999")]
    [InlineData("√2 × √2", "2")]
    public void Values_that_end_are_shown_in_full(string exact, string digits) =>
        Assert.Equal(new Shown(digits, Continues: false, IsExact: true), NumberText.Cut(Of(exact.Replace(" × ", "", StringComparison.Ordinal)), Measure));

    [Fact]
    public void Working_has_the_digits_of_its_kind()
    {
        Value sine = new(null, Trigonometry.Sin(71, 192), Unit.None);
        Assert.Equal("0.94551", NumberText.Cut(sine, Ratio).Digits);
        Assert.Equal("0.945518", NumberText.Cut(sine, NumberStyle.For(Unit.None, 6)).Digits);
        Value side = new(null, Enclosure.Divide(Trigonometry.Sin(71, 192) * new Fraction(120), Trigonometry.Sin(47, 192))!.Value, Unit.Metre);
        Assert.Equal(new Shown("155.140", Continues: true, IsExact: false), NumberText.Cut(side, Measure));
        Assert.Equal("155", NumberText.Rounded(side, Rounding.Default(Unit.Metre)).Digits);
        Exact longEnding = Exact.Of(new Fraction(1, BigInteger.One << 20));
        Assert.Equal(new Shown("0.0000009536", Continues: true, IsExact: false), NumberText.Cut(Value.Of(longEnding, Unit.Metre), Measure));
    }

    [Theory]
    [InlineData("9.996", 3, "10.0", false)]
    [InlineData("99.95", 3, "100", false)]
    [InlineData("999.6", 3, "1000", false)]
    [InlineData("−9.996", 3, "−10.0", false)]
    [InlineData("1234567", 3, "1230000", false)]
    [InlineData("12", 3, "12", true)]
    [InlineData("1200", 3, "1200", true)]
    [InlineData("68π", 3, "214", false)]
    [InlineData("2.9033", 3, "2.90", false)]
    [InlineData("0.00012345", 3, "0.000123", false)]
    [InlineData("0.00012355", 4, "0.0001236", false)]
    [InlineData("0.125", 3, "0.125", true)]
    [InlineData("0", 3, "0", true)]
    public void Answers_are_rounded_to_figures(string exact, int figures, string digits, bool isExact) =>
        Assert.Equal(new Shown(digits, Continues: false, isExact), NumberText.Rounded(Of(exact), Figures(figures)));

    [Theory]
    [InlineData("2.675", 2, "2.68", false)]
    [InlineData("−2.675", 2, "−2.68", false)]
    [InlineData("0.5", 0, "1", false)]
    [InlineData("−0.5", 0, "−1", false)]
    [InlineData("−0.04", 1, "0.0", false)]
    [InlineData("57.5", 1, "57.5", true)]
    [InlineData("58.7694", 1, "58.8", false)]
    [InlineData("60", 1, "60", true)]
    public void Answers_are_rounded_to_places(string exact, int places, string digits, bool isExact) =>
        Assert.Equal(new Shown(digits, Continues: false, isExact), NumberText.Rounded(Of(exact), Places(places)));

    [Fact]
    public void Answers_are_rounded_to_a_step_in_its_unit()
    {
        Rounding metre = new(RoundingKind.Nearest, 0) { Step = 1, Unit = Unit.Metre };
        Rounding tenth = metre with { Step = new Fraction(1, 10) };
        Rounding sixteenth = metre with { Step = new Fraction(1, 16), Unit = Unit.Inch };
        Value length = Value.Of(ExactReader.Read("345.6"), Unit.Centimetre);
        Assert.Equal(new Shown("3", false, false), NumberText.Rounded(length, metre));
        Assert.Equal(new Shown("3.5", false, false), NumberText.Rounded(length, tenth));
        Assert.Equal(new Fraction(7, 2), NumberText.RoundedNumber(length, tenth));
        Value area = Value.Of(ExactReader.Read("12.3"), Unit.Centimetre.To(2));
        Assert.Equal(new Shown("12", false, false), NumberText.Rounded(area, metre));
        Assert.Equal(new Shown("3.0", false, false), NumberText.Rounded(Of("√9.1"), tenth));
        Assert.Equal(new Shown("1", false, true), NumberText.Rounded(Value.Of(ExactReader.Read("2.54"), Unit.Centimetre), sixteenth));
        Assert.Equal(new Shown("0.3125", false, false), NumberText.Rounded(Value.Of(ExactReader.Read("0.3"), Unit.Inch), sixteenth));
    }

    [Theory]
    [InlineData("133.2108", "133.2", "133.3")]
    [InlineData("140.9089", "140.9", "141.0")]
    [InlineData("58.65", "58.65", "58.65")]
    [InlineData("58.651", "58.65", "58.66")]
    [InlineData("−58.651", "−58.66", "−58.65")]
    [InlineData("5000", "5000", "5000")]
    [InlineData("12345.6", "12345", "12346")]
    [InlineData("√2", "1.414", "1.415")]
    [InlineData("0", "0.000", "0.000")]
    public void Bounds_go_outwards_with_one_place_more_than_an_answer(string exact, string lower, string upper)
    {
        bool stays = lower == upper;
        Assert.Equal(new Shown(lower, false, stays), NumberText.LowerBound(Of(exact), Figures(3)));
        Assert.Equal(new Shown(upper, false, stays), NumberText.UpperBound(Of(exact), Figures(3)));
    }

    [Fact]
    public void Readings_go_inwards_to_the_division()
    {
        Fraction millimetre = new(1, 10);
        Assert.Equal(new Fraction(129, 10), NumberText.LeastReading(Of("12.8590204"), millimetre));
        Assert.Equal(new Fraction(146, 10), NumberText.GreatestReading(Of("14.6006535"), millimetre));
        Assert.Equal(new Fraction(129, 10), NumberText.LeastReading(Of("12.9"), millimetre));
    }

    [Fact]
    public void What_is_undecided_is_never_printed()
    {
        Value wide = new(null, Enclosure.Between(1, 2, 192), Unit.Metre);
        Value tie = new(null, Trigonometry.Sin(62, 192) - Trigonometry.Sin(62, 192) + Enclosure.Of(new Fraction(5, 2), 192), Unit.Metre);
        Value zero = new(null, Trigonometry.Sin(62, 192) - Trigonometry.Sin(62, 192), Unit.Metre);
        Value edge = new(null, new Enclosure(BigInteger.One << 192, (BigInteger.One << 192) + 1, 192), Unit.Metre);
        foreach (Value value in new[] { wide, tie, zero })
        {
            Assert.Throws<UndecidedException>(() => NumberText.Cut(value, Measure));
            Assert.Throws<UndecidedException>(() => NumberText.Rounded(value, Places(0)));
            Assert.Throws<UndecidedException>(() => NumberText.LowerBound(value, Places(0)));
        }

        Assert.Throws<UndecidedException>(() => NumberText.Cut(edge, Measure));
        Assert.Throws<UndecidedException>(() => NumberText.Rounded(edge, Places(2)));
    }

    [Fact]
    public void No_digit_of_a_random_value_is_false()
    {
        int shown = 0;
        Gen.Int.Sample(
            seed =>
            {
                Random random = new(seed);
                if (new RandomExpression(random).Draw(random.Next(1, 4)) is not var (library, reference)) return;
                Fraction truth = SecondOpinion.ToFraction(reference);
                if (truth.Abs() < new Fraction(1, 1_000_000) || Decimals.CandidateIn(library, 15) is not null) return;
                Value value = new(null, library, Unit.Metre);
                Shown cut = NumberText.Cut(value, random.Next(2) == 0 ? Measure : Ratio);
                Assert.True(cut is { Continues: true, IsExact: false });
                Assert.Equal(Reference(truth, cut.Digits, r => new Fraction(r.ToBigInteger())), cut.Digits);
                Shown rounded = NumberText.Rounded(value, Places(random.Next(0, 9)));
                Assert.Equal(Reference(truth, rounded.Digits, r => Fraction.Round(r, 0, MidpointRounding.AwayFromZero)), rounded.Digits);
                Interlocked.Increment(ref shown);
            },
            iter: Cases);
        Assert.True(shown > Cases / 3);
    }

    [Fact]
    public void Planted_exact_values_are_printed_as_equal() => Gen.Select(Gen.Int[-2_000_000, 2_000_000], Gen.Int[0, 9], Gen.Int[2, 60], Gen.Int[0, 23]).Sample((digits, places, radicand, step) =>
    {
        // number × root × sine, then divided by both again: it has been irrational on the way.
        Fraction planted = new(digits, Decimals.Ten(places));
        Exact root = Exact.Root(Exact.Of(radicand))!, sine = SpecialAngles.Sin(15 * step + 7)!;
        Exact angle = sine ?? SpecialAngles.Cos(15 * (step % 6))!;
        Exact there = Exact.Multiply(Exact.Multiply(Exact.Of(planted), root)!, angle)!;
        Exact back = Exact.Divide(Exact.Divide(there, angle)!, root)!;
        Shown shown = NumberText.Cut(Value.Of(back, Unit.Metre), Measure);
        Assert.True(shown is { Continues: false, IsExact: true });
        Assert.Equal(planted, ExactReader.Read(shown.Digits).Rational);
    }, iter: 500);

    [Fact]
    public void Values_within_a_hair_of_a_half_are_rounded_by_their_side() => Gen.Select(Gen.Long[0, 100_000_000], Gen.Int[0, 6], Gen.Int[1, 1000], Gen.Bool).Sample((whole, places, hair, above) =>
    {
        Fraction unit = Decimals.TenTo(-places), half = (whole + new Fraction(1, 2)) * unit;
        Exact tiny = Exact.Multiply(Exact.Of(new Fraction(above ? hair : -hair, BigInteger.Pow(10, 21))), Exact.Root(Exact.Of(2))!)!;
        Exact exact = Exact.Add(Exact.Of(half), tiny)!;
        string expected = Decimals.Write(new BigInteger(above ? whole + 1 : whole), places);
        Assert.Equal(expected, NumberText.Rounded(Value.Of(exact, Unit.Metre), Places(places)).Digits);
        Assert.Equal(expected, NumberText.Rounded(new Value(null, exact.Enclose(192), Unit.Metre), Places(places)).Digits);
        Assert.Equal(Decimals.Write(new BigInteger(whole + 1), places), NumberText.Rounded(Value.Of(Exact.Of(half), Unit.Metre), Places(places)).Digits);
        Assert.Equal(Decimals.Write(new BigInteger(-whole - 1), places), NumberText.Rounded(Value.Of(Exact.Of(-half), Unit.Metre), Places(places)).Digits);
    }, iter: 2000);

    [Fact]
    public void An_exact_value_nearer_to_a_tie_than_its_enclosure_climbs_the_ladder()
    {
        Exact tiny = Exact.Power(Exact.Subtract(Exact.Root(Exact.Of(2))!, Exact.One)!, 300)!;
        Value above = Value.Of(Exact.Add(Exact.Of(new Fraction(5, 2)), tiny)!, Unit.Metre);
        Value below = Value.Of(Exact.Subtract(Exact.Of(new Fraction(5, 2)), tiny)!, Unit.Metre);
        Assert.Null(Decided(above));
        Assert.Equal(("3", "2"), (NumberText.Rounded(above, Places(0)).Digits, NumberText.Rounded(below, Places(0)).Digits));
        Assert.Equal("2.500000000", NumberText.Cut(above, new NumberStyle(9, 4)).Digits);
        Assert.Equal("2.499999999", NumberText.Cut(below, new NumberStyle(9, 4)).Digits);

        static int? Decided(Value value) => (value.True - Enclosure.Of(new Fraction(5, 2), 192)).Sign;
    }

    /// <summary>The truth in units of the last printed place, made whole by a rule, with the places that were printed.</summary>
    private static string Reference(Fraction truth, string digits, Func<Fraction, Fraction> whole)
    {
        int point = digits.IndexOf('.', StringComparison.Ordinal), places = point < 0 ? 0 : digits.Length - point - 1;
        return Decimals.Write(whole(truth * Decimals.TenTo(places)).ToBigInteger(), places);
    }
}
