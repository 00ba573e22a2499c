using System.Globalization;
using Fractions;

namespace Explain;

/// <summary>A number as a page shows it, held against values: every digit must follow from the enclosure of a value.</summary>
/// <param name="Is">The number that its digits say.</param>
/// <param name="Digits">Its digits, with a point.</param>
/// <param name="Continues">Whether an ellipsis says that it was cut.</param>
internal sealed record PrintedNumber(Fraction Is, string Digits, bool Continues)
{
    private int Places => Digits.Contains('.', StringComparison.Ordinal) ? Digits.Length - Digits.IndexOf('.', StringComparison.Ordinal) - 1 : 0;

    /// <summary>Digits with a point and a hyphen for a minus, whatever the page uses.</summary>
    public static string Plain(string digits) => digits.Replace(',', '.').Replace('−', '-');

    public static PrintedNumber? Read(MathNumber number)
    {
        string digits = Plain(number.Digits);
        return Fraction.TryParse(digits, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out Fraction read)
            ? new(read, digits, number.Continues) : null;
    }

    /// <summary>Whether it is the value itself, or the value cut after its last digit.</summary>
    public bool Shows(Value value)
    {
        if (!Continues) return value.Exact?.Rational == Is;
        Fraction unit = Decimals.TenTo(-Places), size = Is.Abs();
        (Fraction low, Fraction high) = Size(value);
        return low >= size && high <= size + unit && value.Exact?.Rational != Is && (Is.IsZero || Is.IsNegative == value.True.Middle.IsNegative);
    }

    /// <summary>Whether it is a part of an answer: the rounded value, an exact value, an end of its bounds or how far it may be out.</summary>
    public bool Answers(AnswerValue answer)
    {
        if (Continues || answer.Value is not { } value) return false;
        Rounding rule = AnswerText.RoundingOf(answer, value).ForDecimals(value.Unit);
        Unit unit = rule.UnitFor(value.Unit);
        return Shows(value.In(unit)) || IsPart(NumberText.RoundedNumber(value, rule), rule, unit) || IsRounded(value.In(unit), rule) || answer.Bounds is { } bounds && (IsEnd(bounds, unit) || IsPart(NumberText.LowerNumber(bounds.Lower, rule), rule, unit) || IsPart(NumberText.UpperNumber(bounds.Upper, rule), rule, unit)
            || Digits == Margin.Of(value, bounds, rule).Digits);
    }

    /// <summary>Whether it stands in a number that is split into units, or into a whole and a fraction.</summary>
    private bool IsPart(Fraction number, Rounding rule, Unit unit)
    {
        if (rule is { Parts.Count: 0, Fractions: false }) return false;
        (Fraction Number, Unit Unit)[] parts = [.. MixedUnits.Split(number, rule.Parts.Count > 0 ? rule.Parts : [unit])];
        Fraction last = parts[^1].Number, whole = new(Whole.Floor(last)), rest = (last - whole).Reduce();
        return parts.Any(p => p.Number == Is) || rule.Fractions && (Is == whole || !rest.IsZero && (Is == new Fraction(rest.Numerator) || Is == new Fraction(rest.Denominator)));
    }

    private bool IsRounded(Value value, Rounding rule)
    {
        Fraction step = StepOf(value, rule), off = (value.True.Middle - Is).Abs();
        return (Is / step).Denominator.IsOne && off <= step / 2 + value.True.Width;
    }

    /// <summary>Ends are rounded outwards, by less than one of the last place shown.</summary>
    private bool IsEnd(Bounds bounds, Unit unit)
    {
        Fraction last = Decimals.TenTo(-Places);
        Enclosure lower = bounds.Lower.In(unit).True, upper = bounds.Upper.In(unit).True;
        return Is <= lower.High && lower.High - Is < last || Is >= upper.Low && Is - upper.Low < last;
    }

    /// <summary>The step between two numbers that a rule lets stand at this size.</summary>
    private static Fraction StepOf(Value value, Rounding rule)
    {
        if (rule.Kind == RoundingKind.Nearest) return rule.Step;
        if (rule.Kind == RoundingKind.DecimalPlaces) return Decimals.TenTo(-rule.Digits);
        Fraction size = value.True.Middle.Abs();
        int power = 0;
        if (size.IsZero) return Decimals.TenTo(1 - rule.Digits);
        while (Decimals.TenTo(power) > size) power--;
        while (Decimals.TenTo(power + 1) <= size) power++;
        return Decimals.TenTo(power + 1 - rule.Digits);
    }

    private static (Fraction Low, Fraction High) Size(Value value) => value.True.Middle.IsNegative
        ? (-value.True.High, -value.True.Low) : (value.True.Low, value.True.High);
}
