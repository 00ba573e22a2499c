using System.Globalization;
using System.Numerics;
using Fractions;

namespace Explain.Tests.Numbers;

/// <summary>Reads exact numbers as they are printed: digits, spaces between digits, √, π, powers of π, brackets, + − /.</summary>
internal sealed class ExactReader(string text)
{
    private int at;

    public static Exact Read(string text)
    {
        ExactReader reader = new(text.Replace(" ", "", StringComparison.Ordinal).Replace(",", "", StringComparison.Ordinal));
        Exact value = reader.Sum();
        Assert.Equal(reader.Length, reader.at);
        return value;
    }

    private int Length => text.Length;

    private Exact Sum()
    {
        Exact sum = Take('−') ? Product().Negate() : Product();
        while (true)
        {
            if (Take('+')) sum = Exact.Add(sum, Product())!;
            else if (Take('−')) sum = Exact.Subtract(sum, Product())!;
            else return sum;
        }
    }

    private Exact Product()
    {
        Exact product = Factor();
        while (at < text.Length && text[at] is not ('+' or '−' or ')'))
            product = Take('/') ? Exact.Divide(product, Factor())! : Exact.Multiply(product, Factor())!;
        return product;
    }

    private Exact Factor()
    {
        if (Take('√')) return Exact.Root(Factor())!;
        if (Take('π')) return Take('²') ? Exact.Power(Exact.Pi, 2)! : Take('^') ? Exact.Power(Exact.Pi, int.Parse(Digits(), CultureInfo.InvariantCulture))! : Exact.Pi;
        if (!Take('(')) return Exact.Of(Number(Digits()));
        Exact inside = Sum();
        Assert.True(Take(')'));
        return inside;
    }

    private bool Take(char wanted) => at < text.Length && text[at] == wanted && ++at > 0;

    private string Digits()
    {
        int start = at;
        while (at < text.Length && (char.IsAsciiDigit(text[at]) || text[at] == '.')) at++;
        Assert.NotEqual(start, at);
        return text[start..at];
    }

    private static Fraction Number(string digits)
    {
        int places = digits.Contains('.', StringComparison.Ordinal) ? digits.Length - digits.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        return new(BigInteger.Parse(digits.Replace(".", "", StringComparison.Ordinal), CultureInfo.InvariantCulture), BigInteger.Pow(10, places));
    }
}
