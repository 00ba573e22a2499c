using CsCheck;
using Fractions;

namespace Explain.Tests.Numbers;

public sealed class ExactTextTests
{
    [Theory]
    [InlineData("0", "0", "0")]
    [InlineData("−1", "−1", "−1")]
    [InlineData("5/12", "5/12", "5/12")]
    [InlineData("31.5", "63/2", "31.5")]
    [InlineData("31.5(√2 + 1)", "63(√2 + 1)/2", "31.5(√2 + 1)")]
    [InlineData("68π", "68π", "68π")]
    [InlineData("60.75π", "243π/4", "60.75π")]
    [InlineData("17π + 18", "17π + 18", "17π + 18")]
    [InlineData("18 − 17π", "18 − 17π", "18 − 17π")]
    [InlineData("−17π − 18", "−(17π + 18)", "−(17π + 18)")]
    [InlineData("9π/2 + 6", "3(3π + 4)/2", "1.5(3π + 4)")]
    [InlineData("√(41 − 20√2)", "√(41 − 20√2)", "√(41 − 20√2)")]
    [InlineData("−3√(41 − 20√2)/7", "−3√(41 − 20√2)/7", "−3√(41 − 20√2)/7")]
    [InlineData("√(3√2 − 2)", "√(3√2 − 2)", "√(3√2 − 2)")]
    [InlineData("√3/2", "√3/2", "0.5√3")]
    [InlineData("√(10 − 2√5)/4", "√(10 − 2√5)/4", "0.25√(10 − 2√5)")]
    [InlineData("3√11/11", "3√11/11", "3√11/11")]
    [InlineData("5√7 − 5√2", "5(√7 − √2)", "5(√7 − √2)")]
    [InlineData("√2π", "π√2", "π√2")]
    [InlineData("3π√2 + 6π", "3π(√2 + 2)", "3π(√2 + 2)")]
    [InlineData("π² + π", "π(π + 1)", "π(π + 1)")]
    [InlineData("7π²", "7π²", "7π²")]
    [InlineData("7π^3", "7π^3", "7π^3")]
    [InlineData("1/π", "1/π", "1/π")]
    [InlineData("5/(2π)", "5/(2π)", "2.5/π")]
    [InlineData("(√2 + 1)/(3π)", "(√2 + 1)/(3π)", "(√2 + 1)/(3π)")]
    [InlineData("2 + 1/π", "(2π + 1)/π", "(2π + 1)/π")]
    [InlineData("(27√3 + 54)/8", "27(√3 + 2)/8", "3.375(√3 + 2)")]
    public void Numbers_are_written_with_the_rational_content_in_front(string typed, string fractions, string decimals)
    {
        Exact value = ExactReader.Read(typed);
        Assert.Equal(fractions, value.ToString());
        Assert.Equal(decimals, ExactText.Write(value, decimals: true));
    }

    [Fact]
    public void What_is_written_is_read_back_as_the_same_number() => Gen.Int.Sample(
        seed =>
        {
            Random random = new(seed);
            Exact value = Exact.Zero;
            for (int i = random.Next(1, 5); i > 0; i--)
            {
                Exact term = Exact.Multiply(Exact.Of(new Fraction(random.Next(-30, 31), random.Next(1, 41))), Exact.Root(Exact.Of(random.Next(1, 40)))!)!;
                value = Exact.Add(value, Exact.Multiply(term, Exact.Power(Exact.Pi, random.Next(4) == 0 ? random.Next(-2, 4) : 0)!)!)!;
            }

            if (random.Next(2) == 0) value = Exact.Root(value) is { } root ? Exact.Multiply(root, Exact.Of(new Fraction(-3, 7)))! : value;
            Assert.Equal(value, ExactReader.Read(value.ToString()));
            Assert.Equal(value, ExactReader.Read(ExactText.Write(value, decimals: true)));
        },
        iter: 3000);
}
