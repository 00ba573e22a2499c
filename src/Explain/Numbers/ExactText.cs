using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>Writes exact numbers in the grammar of problem files, the rational content in front: 31.5(√2 + 1), (√6 − √2)/4.</summary>
internal static class ExactText
{
    /// <param name="exact">The number.</param>
    /// <param name="decimals">Whether fractions that end are written as decimals.</param>
    public static string Write(Exact exact, bool decimals)
    {
        if (exact.Under is not { } under) return Write(exact.Front, decimals);
        Fraction factor = exact.Front.Rational!.Value;
        string root = $"√({Write(under, decimals)})";
        return Fit(factor, root, decimals);
    }

    private static string Write(SurdSum sum, bool decimals)
    {
        if (sum.IsZero) return "0";
        (Fraction Factor, BigInteger Root, int Pi)[] terms = [.. sum.Terms.OrderByDescending(t => t.Pi).ThenByDescending(t => t.Root)];
        if (terms.Length == 1) return Fit(terms[0].Factor, Symbols(terms[0].Root, terms[0].Pi), decimals);
        if (terms[0].Factor < 0 && terms.FirstOrDefault(t => t.Factor > 0) is { Factor.IsZero: false } first)
            terms = [first, .. terms.Where(t => t != first)];
        Fraction content = Content(terms);
        string inside = terms.Aggregate("", (text, t) => Join(text, t.Factor / content, Symbols(t.Root, t.Pi)));
        return content == 1 ? inside : Fit(content, $"({inside})", decimals);
    }

    private static string Join(string text, Fraction factor, string symbols)
    {
        string size = Fit(factor.Abs(), symbols, decimals: false);
        return text.Length == 0 ? (factor < 0 ? "−" : "") + size : text + (factor < 0 ? " − " : " + ") + size;
    }

    /// <summary>A rational factor before symbols: 31.5(…), (…)/4, √3/2, 2√3/3; without symbols the number alone.</summary>
    private static string Fit(Fraction factor, string symbols, bool decimals)
    {
        string sign = factor < 0 ? "−" : "";
        Fraction size = factor.Abs();
        if (decimals && Decimals.PlacesOf(size) is { } places and > 0)
            return sign + Decimals.Write(Decimals.Floor(size, places), places) + symbols;
        string top = size.Numerator.IsOne && symbols.Length > 0 ? symbols : size.Numerator.ToString(System.Globalization.CultureInfo.InvariantCulture) + symbols;
        return sign + (size.Denominator.IsOne ? top : $"{top}/{size.Denominator.ToString(System.Globalization.CultureInfo.InvariantCulture)}");
    }

    private static string Symbols(BigInteger root, int pi)
    {
        string roots = root.IsOne ? "" : "√" + root.ToString(System.Globalization.CultureInfo.InvariantCulture);
        return roots + pi switch { 0 => "", 1 => "π", 2 => "π²", _ => $"π^{pi.ToString(System.Globalization.CultureInfo.InvariantCulture)}" };
    }

    private static Fraction Content((Fraction Factor, BigInteger Root, int Pi)[] terms)
    {
        BigInteger top = 0, bottom = 1;
        foreach ((Fraction factor, BigInteger _, int _) in terms)
        {
            top = BigInteger.GreatestCommonDivisor(top, factor.Numerator);
            bottom = bottom / BigInteger.GreatestCommonDivisor(bottom, factor.Denominator) * factor.Denominator;
        }

        return new Fraction(top, bottom);
    }
}
