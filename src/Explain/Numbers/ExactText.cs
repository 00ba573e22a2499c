using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using System.Text;
using Fractions;

namespace Explain;

/// <summary>Writes exact numbers in the grammar of problem files, rational content in front.</summary>
internal static class ExactText
{
    /// <param name="value">The number.</param>
    /// <param name="decimals">Whether fractions that end are written as decimals: 31.5(√2 + 1) and not 63(√2 + 1)/2.</param>
    public static string Write(Exact value, bool decimals)
    {
        if (value.Under is { } under)
        {
            return Product(value.Front.Rational!.Value, 0, $"√({Sum(NumberFirst(under))})", isSum: false, decimals);
        }

        var factor = value.Front;
        if (factor.IsZero)
        {
            return "0";
        }

        var content = factor.Terms.All(t => t.Coefficient.IsNegative) ? -factor.Content() : factor.Content();
        var power = factor.Terms.Min(t => t.PiPower);
        var inner = (factor * content.Reciprocal()).TimesPi(-power);
        return inner.Rational is not null
            ? Product(content, power, "", isSum: false, decimals)
            : Product(content, power, Sum(inner.Terms), inner.Terms.Length > 1, decimals);
    }

    private static string Product(Fraction content, int power, string inner, bool isSum, bool decimals)
    {
        var ends = decimals && Decimals.PlacesOf(content) is not null;
        var top = ends ? Decimals.InFull(content.Abs())! : Digits(BigInteger.Abs(content.Numerator));
        var bottom = Power(ends ? BigInteger.One : content.Denominator, -power);
        var front = (top == "1" ? "" : top) + (power > 0 ? Pi(power) : "");
        var bracketed = isSum && (front != "" || bottom != "" || content.IsNegative) ? $"({inner})" : inner;
        var above = front + bracketed == "" ? "1" : front + bracketed;
        return (content.IsNegative ? "−" : "") + above + bottom;
    }

    private static string Power(BigInteger number, int power)
    {
        var pi = power > 0 ? Pi(power) : "";
        return number.IsOne ? (pi == "" ? "" : "/" + pi)
            : pi == "" ? "/" + Digits(number)
            : $"/({Digits(number)}{pi})";
    }

    /// <summary>The terms with signs between, a positive one in front where there is one.</summary>
    private static string Sum(ImmutableArray<SurdTerm> terms)
    {
        var first = terms.First(t => t.Coefficient.IsPositive);
        var text = new StringBuilder(Term(first));
        foreach (var term in terms.Where(t => t != first))
        {
            text.Append(term.Coefficient.IsNegative ? " − " : " + ").Append(Term(term with { Coefficient = term.Coefficient.Abs() }));
        }

        return text.ToString();
    }

    private static string Term(SurdTerm term)
    {
        var marks = (term.PiPower > 0 ? Pi(term.PiPower) : "") + (term.Radicand.IsOne ? "" : "√" + Digits(term.Radicand));
        return term.Coefficient == 1 && marks != "" ? marks : Digits(term.Coefficient.Numerator) + marks;
    }

    private static ImmutableArray<SurdTerm> NumberFirst(SurdSum sum) => [.. sum.Terms.OrderByDescending(t => t.IsRational)];

    private static string Pi(int power) => power switch
    {
        1 => "π",
        2 => "π²",
        _ => "π^" + Digits(power),
    };

    private static string Digits(BigInteger number) => number.ToString(CultureInfo.InvariantCulture);
}
