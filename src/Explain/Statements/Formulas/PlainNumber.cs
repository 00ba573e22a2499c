using System.Globalization;
using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>Numbers as typed, exactly.</summary>
internal static class PlainNumber
{
    /// <summary>A decimal as a fraction; null when it is longer than anybody measures.</summary>
    public static Fraction? Decimal(string text)
    {
        string[] halves = text.Split('e', 'E');
        string digits = halves[0].Replace(".", "", StringComparison.Ordinal);
        int places = halves[0].Contains('.') ? halves[0].Length - 1 - halves[0].IndexOf('.') : 0;
        if (digits.Length > TextLimits.Digits || !Power(halves, out int power)) return null;
        return new Fraction(BigInteger.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture)) * Decimals.TenTo(power - places);
    }

    /// <summary>A sum, product … of numbers without letters and units; null when it is none, has no exact form, or is far too long.</summary>
    public static Exact? Of(Expr closed) => closed switch
    {
        Quantity { Unit: var unit } q => unit == Unit.None ? q.Amount : null,
        Sum s => Both(s.Left, s.Right, Exact.Add),
        Difference d => Both(d.Left, d.Right, Exact.Subtract),
        Product p => Both(p.Left, p.Right, Exact.Multiply),
        Quotient q => Both(q.Left, q.Right, Exact.Divide),
        Power p => Of(p.Base) is { } of && Size(of) * p.Exponent <= TextLimits.ExactBits ? Exact.Power(of, p.Exponent) : null,
        Root r => Of(r.Of) is { } of && Size(of) <= TextLimits.ExactBits ? Exact.Root(of) : null,
        Negative n => Of(n.Of)?.Negate(),
        _ => null,
    };

    /// <summary>The formula, as one number where it is one that holds a root or π.</summary>
    public static Expr Folded(Expr formula, params ReadOnlySpan<Expr> operands)
    {
        bool irrational = false;
        foreach (Expr operand in operands)
        {
            if (operand is not Quantity { Unit: var unit } number || unit != Unit.None) return formula;
            irrational |= number.Amount.Rational is null;
        }

        return (irrational || formula is Root) && Of(formula) is { } exact ? new Quantity(exact, Unit.None) : formula;
    }

    private static Exact? Both(Expr left, Expr right, Func<Exact, Exact, Exact?> by) => Of(left) is { } a && Of(right) is { } b ? by(a, b) : null;

    private static long Size(Exact number) =>
        number.Front.Terms.Concat(number.Under?.Terms ?? []).Sum(t => t.Coefficient.Numerator.GetBitLength() + t.Coefficient.Denominator.GetBitLength() + t.Radicand.GetBitLength());

    private static bool Power(string[] halves, out int power)
    {
        power = 0;
        return halves.Length == 1
            || (int.TryParse(halves[1], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out power) && power is >= -TextLimits.Digits and <= TextLimits.Digits);
    }
}
