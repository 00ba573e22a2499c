using System.Numerics;
using CsCheck;
using Fractions;

namespace Explain.Tests.Numbers;

public sealed class ExactTests
{
    private static readonly int Scale = Effort.Of(1, 10);

    private static Exact Read(string text) => ExactReader.Read(text);

    private static Exact Root(long of) => Exact.Root(Exact.Of(of))!;

    [Fact]
    public void Random_expressions_equal_the_computation_in_a_number_field()
    {
        int divided = 0;
        Gen.Int.Sample(
            seed =>
            {
                Random random = new(seed);
                (Exact exact, NumberField field) = Leaf(random);
                for (int i = random.Next(1, 7); i > 0; i--)
                {
                    (Exact other, NumberField otherField) = Leaf(random);
                    Exact? next;
                    (next, NumberField nextField) = random.Next(4) switch
                    {
                        0 => (Exact.Add(exact, other), field + otherField),
                        1 => (Exact.Subtract(exact, other), field - otherField),
                        2 => (Exact.Multiply(exact, other), field * otherField),
                        _ => otherField.IsZero ? (exact, field) : (Exact.Divide(exact, other), field / otherField),
                    };
                    Assert.NotNull(next);
                    (exact, field) = (next, nextField);
                    Assert.True(field.Equals(exact), $"seed {seed}: {exact}");
                }

                if (exact.Sign != 0 && Exact.Divide(Exact.One, exact) is { } inverse)
                {
                    Assert.True((new NumberField(One()) / field).Equals(inverse), $"seed {seed}: 1/({exact})");
                    Interlocked.Increment(ref divided);
                }

                Exact square = Exact.Multiply(exact, exact)!;
                Assert.Equal(exact.Sign < 0 ? exact.Negate() : exact, Exact.Root(square));
            },
            iter: 500 * Scale);
        Assert.True(divided > 50);
    }

    [Fact]
    public void Near_misses_stay_different() => Gen.Int.Sample(
        seed =>
        {
            Random random = new(seed);
            Exact exact = Leaf(random).Exact;
            Exact miss = random.Next(2) == 0
                ? Exact.Of(new Fraction(random.Next(2) == 0 ? 1 : -1, BigInteger.Pow(10, random.Next(16, 80))))
                : Exact.Power(Exact.Subtract(Root(2), Exact.One)!, random.Next(40, 200))!;
            Exact near = Exact.Add(exact, miss)!;
            Assert.NotEqual(exact, near);
            Assert.False(exact == near);
            Assert.Equal(miss.Sign, near.CompareTo(exact));
            Assert.Equal(-miss.Sign, exact.CompareTo(near));
            Assert.Equal(miss, Exact.Subtract(near, exact));
            Exact back = Exact.Subtract(near, miss)!;
            Assert.Equal(exact, back);
            Assert.Equal(exact.GetHashCode(), back.GetHashCode());
        },
        iter: 500 * Scale);

    [Fact]
    public void Enclosures_hold_the_number_at_every_precision() => Gen.Int.Sample(
        seed =>
        {
            Random random = new(seed);
            Exact exact = Leaf(random).Exact;
            if (random.Next(2) == 0 && exact.Sign > 0) exact = Exact.Root(exact)!;
            if (!exact.IsNested && random.Next(2) == 0) exact = Exact.Divide(exact, Exact.Pi)!;
            Enclosure fine = exact.Enclose(1536);
            foreach (int bits in new[] { 20, 64, 192, 768 })
                Assert.True(exact.Enclose(bits).Low <= fine.Low && fine.High <= exact.Enclose(bits).High);
            Assert.Equal(exact.Sign, fine.Sign);
        },
        iter: 500 * Scale);

    [Theory]
    [InlineData("√2")]
    [InlineData("π")]
    [InlineData("5√3/(7π)")]
    [InlineData("(17π + 18)/π²")]
    [InlineData("√(29√2 − 41)")]
    public void Enclosures_are_narrow_and_agree_with_the_second_implementation(string typed)
    {
        BigInteger two = SecondOpinion.Root(SecondOpinion.Of(2)), pi = SecondOpinion.Pi;
        BigInteger expected = typed switch
        {
            "√2" => two,
            "π" => pi,
            "5√3/(7π)" => SecondOpinion.Over(5 * SecondOpinion.Root(SecondOpinion.Of(3)), 7 * pi),
            "(17π + 18)/π²" => SecondOpinion.Over(17 * pi + SecondOpinion.Of(18), SecondOpinion.Times(pi, pi)),
            _ => SecondOpinion.Root(29 * two - SecondOpinion.Of(41)),
        };
        Enclosure enclosure = Read(typed).Enclose(192);
        Assert.True(enclosure.Contains(SecondOpinion.ToFraction(expected)));
        Assert.True(enclosure.Width <= new Fraction(2, BigInteger.One << 192));
    }

    [Theory]
    [InlineData("√(3 + 2√2)", "√2 + 1")]
    [InlineData("√(3 − 2√2)", "√2 − 1")]
    [InlineData("√(9 + 6√2)", "√6 + √3")]
    [InlineData("√(2 − √3)", "(√6 − √2)/2")]
    [InlineData("√(10 + 2√6 + 2√10 + 2√15)", "√5 + √3 + √2")]
    [InlineData("√(25 + 4√15 − 4√10 − 8√6)", "√5 + 2√3 − 2√2")]
    [InlineData("√(√2 + 1) × √(√2 − 1)", "1")]
    [InlineData("√(5 + 2√5) + √(5 − 2√5)", "√(10 + 2√5)")]
    [InlineData("√(5 − 2√5) − √(5 + 2√5)", "−√(10 − 2√5)")]
    [InlineData("√(2 + √2) − √(2 + √2)", "0")]
    [InlineData("3√(2 + √2) + √(8 + 4√2)", "5√(2 + √2)")]
    [InlineData("√(41 − 20√2)", "√(41 − 20√2)")]
    [InlineData("√(3/4 + √2)", "√(3 + 4√2)/2")]
    [InlineData("√(√2)", "√(√2)")]
    [InlineData("√(12)", "2√3")]
    [InlineData("√(9π²/4)", "3π/2")]
    [InlineData("√(5/12)", "√15/6")]
    [InlineData("1/(√2 − 1)", "√2 + 1")]
    [InlineData("1/(√2 + √3 + √5)", "(2√3 − √30 + 3√2)/12")]
    [InlineData("1/√(2 + √2)", "√(4 − 2√2)/2")]
    [InlineData("3√2/(2π)", "3√2/(2π)")]
    [InlineData("(17π + 18)/π", "(17π + 18)/π")]
    [InlineData("(17π + 18)/(34π + 36)", "1/2")]
    [InlineData("√6 × √10 × √15", "30")]
    public void Roots_come_out_of_their_nests(string typed, string expected)
    {
        Exact value = Times(typed);
        Assert.Equal(Times(expected), value);
        Assert.Equal(expected, value.ToString());
    }

    [Fact]
    public void What_leaves_the_class_has_no_exact_form()
    {
        Exact pi = Exact.Pi, nested = Read("√(2 + √2)");
        Assert.Null(Exact.Divide(Exact.One, Exact.Add(Exact.One, pi)!));
        Assert.Null(Exact.Root(pi));
        Assert.Null(Exact.Root(Exact.Of(-2)));
        Assert.Null(Exact.Root(nested));
        Assert.Null(Exact.Multiply(nested, pi));
        Assert.Null(Exact.Add(nested, Exact.One));
        Assert.Null(Exact.Add(nested, Read("√(2 + √3 + √5)")));
        Assert.Null(Exact.Divide(Exact.One, Exact.Zero));
        Assert.Null(Exact.Divide(Exact.One, Read("√2 + √3 + √5 + √7")));
        Assert.Null(Exact.Root(Read("√2 + √3 + √5 + √7 + √11 + 20")));
        Assert.Null(Exact.Power(Exact.Add(Read("√2 + √3 + √5 + √7"), pi)!, 3));
        Assert.Null(Exact.Power(Exact.Add(Exact.One, pi)!, -1));
    }

    [Fact]
    public void The_identities_hold()
    {
        Assert.Equal(Exact.Of(2), Exact.Power(Root(2), 2));
        Assert.Equal(Read("√2 − 1"), SpecialAngles.Tan(new Fraction(45, 2)));
        Assert.Null(SpecialAngles.Sin(62));
        Assert.Equal(Exact.Zero, Exact.Subtract(Exact.Pi, Exact.Pi));
        Assert.Equal(Exact.One, Exact.Power(Read("√(41 − 20√2)"), 0));
        Assert.Equal(Read("41 − 20√2"), Exact.Power(Read("√(41 − 20√2)"), 2));
        Assert.Equal(Read("1/(41 − 20√2)"), Exact.Power(Read("√(41 − 20√2)"), -2));
        Assert.Equal(Exact.Of(long.MaxValue), Exact.Power(Exact.Root(Exact.Of(long.MaxValue)) ?? Exact.Of(0), 2));
        Assert.Equal(new Fraction(1, 2), Exact.Of(new Fraction(2, 4, false)).Rational);
        Assert.Null(Exact.Pi.Rational);
        Assert.Equal(1, Exact.One.CompareTo(null));
        Assert.Equal(0, Exact.One.CompareTo(Exact.Of(1)));
        Assert.False(Exact.One.Equals((object)1));
        Assert.True(null as Exact != Exact.One);
    }

    [Fact]
    public void Squares_of_any_length_are_recognised_and_others_are_never_split_wrongly() => Gen.Select(Gen.Long[1, long.MaxValue], Gen.Int[1, 1_000_000]).Sample((big, small) =>
    {
        Fraction square = new(BigInteger.Pow(big, 2), BigInteger.Pow(small, 2));
        Assert.Equal(new Fraction(big, small), Exact.Root(Exact.Of(square))?.Rational);
        if (Squares.Split(big) is not var (outside, inside)) return;
        Assert.Equal(big, outside * outside * inside);
        for (int prime = 2; prime < 2000; prime++)
            Assert.False((inside % (prime * prime)).IsZero);
    }, iter: 1000 * Scale);

    [Fact]
    public void The_root_of_a_sum_smaller_than_any_precision_tried_first_is_enclosed()
    {
        Exact tiny = Exact.Power(Exact.Subtract(Root(2), Exact.One)!, 401)!, root = Exact.Root(tiny)!;
        Assert.True(root.IsNested);
        Assert.True(root.Enclose(192).Low >= 0 && root.Enclose(192).High <= new Fraction(2, BigInteger.One << 192));
        Assert.Equal(1, root.Enclose(1536).Sign);
        Assert.Equal(1, root.CompareTo(tiny));
    }

    [Fact]
    public void A_number_too_long_to_be_taken_apart_is_left_alone()
    {
        // 65537 and 65539 are prime, and above every divisor that is tried.
        Assert.Null(Squares.Split(new BigInteger(65537) * 65537 * 65539));
        Assert.Null(Exact.Root(Exact.Of(65537L * 65537 * 65539)));
        Assert.Equal(4 * 65537, Exact.Root(Exact.Of(16L * 65537 * 65537))!.Rational);
    }

    [Fact]
    public void Of_triangles_with_30_or_45_degrees_the_root_denests_in_20_of_420()
    {
        var thirds = from a in Enumerable.Range(1, 20) from b in Enumerable.Range(a, 21 - a) from angle in new[] { 30, 45 }
                     let product = Exact.Multiply(Exact.Of(2 * a * b), SpecialAngles.Cos(angle)!)!
                     select Exact.Root(Exact.Subtract(Exact.Of(a * a + b * b), product)!)!;
        Exact[] sides = [.. thirds];
        Assert.Equal(420, sides.Length);
        Assert.Equal(20, sides.Count(s => !s.IsNested));
    }

    private static Exact Times(string typed) => typed.Split('×').Select(Read).Aggregate((a, b) => Exact.Multiply(a, b)!);

    private static Fraction[] One() => [Fraction.One, .. Enumerable.Repeat(Fraction.Zero, NumberField.Size - 1)];

    /// <summary>A sum of up to three terms over at most three primes, so that it can be a divisor.</summary>
    private static (Exact Exact, NumberField Field) Leaf(Random random)
    {
        int left = 1 << random.Next(4);
        int[] places = [.. Enumerable.Range(0, NumberField.Size).Where(i => (i & left) == 0)];
        Fraction[] coordinates = new Fraction[NumberField.Size];
        Exact exact = Exact.Zero;
        for (int i = random.Next(1, 4); i > 0; i--)
        {
            int place = places[random.Next(places.Length)];
            Fraction factor = new(random.Next(-20, 21), random.Next(1, 13));
            coordinates[place] += factor;
            exact = Exact.Add(exact, Exact.Multiply(Exact.Of(factor), Root(NumberField.Radicand(place)))!)!;
        }

        return (exact, new(coordinates));
    }
}
