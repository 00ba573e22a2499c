using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>Prints values. A digit is shown only when it is proved.</summary>
internal static class NumberText
{
    private const int MostPlaces = 9;

    /// <summary>A value in working: in full when it ends soon enough, otherwise cut towards zero.</summary>
    public static Shown Cut(Value value, NumberStyle style)
    {
        if (value.Exact?.Rational is { } rational && Decimals.PlacesOf(rational) is <= MostPlaces and { } places)
            return new(Decimals.Write(Decimals.Floor(rational, places), places), false, true);
        int shown = Places(value, style);
        return new(Decimals.Write(CutUnits(value, shown), shown), true, false);
    }

    /// <summary>A value rounded, halves away from zero.</summary>
    public static Shown Rounded(Value value, Rounding rule)
    {
        if (rule.Kind == RoundingKind.Nearest) return Nearest(value, rule);
        int places = PlacesFor(value, rule);
        if (value.Exact?.Rational is { } rational && Decimals.PlacesOf(rational) is { } needed && needed <= (places < 0 ? 0 : places)
            && RoundUnits(value, places) is var units && Scaled(units, places) == rational)
            return new(Decimals.Write(Decimals.Floor(rational, needed), needed), false, true);
        return new(Written(RoundUnits(value, places), places), false, false);
    }

    /// <summary>A lower bound: cut downwards; an end that is exact at the printed places stays.</summary>
    public static Shown LowerBound(Value value, Rounding rule) => Outward(value, Finer(value, rule), Decimals.Floor);

    /// <summary>An upper bound: upwards.</summary>
    public static Shown UpperBound(Value value, Rounding rule) => Outward(value, Finer(value, rule), Decimals.Ceiling);

    /// <summary>The decimal places that a rounding gives a value; negative for tens, hundreds …</summary>
    public static int PlacesFor(Value value, Rounding rule)
    {
        if (rule.Kind == RoundingKind.DecimalPlaces) return rule.Digits;
        if (value.True.Sign == 0) return rule.Digits - 1;
        int places = rule.Digits - Figures(value);
        return BigInteger.Abs(RoundUnits(value, places)) >= Decimals.Ten(rule.Digits) ? places - 1 : places;
    }

    /// <summary>One place more than an answer of this rounding shows.</summary>
    private static int Finer(Value value, Rounding rule) =>
        rule.Kind == RoundingKind.Nearest ? (Decimals.PlacesOf(rule.Step) ?? 2) + 1 : PlacesFor(value, rule) + 1;

    private static Shown Outward(Value value, int places, Func<Fraction, int, BigInteger> direction)
    {
        int shown = places < 0 ? 0 : places;
        (Fraction low, Fraction high) = Ends(value);
        BigInteger units = direction(low, shown);
        if (units != direction(high, shown)) throw new UndecidedException();
        return new(Decimals.Write(units, shown), false, low == high && Scaled(units, shown) == low);
    }

    private static Shown Nearest(Value value, Rounding rule)
    {
        Value inUnit = rule.Unit is { } unit && unit.SameKind(value.Unit) ? value.In(unit) : value;
        Value steps = new(inUnit.Exact is null ? null : Exact.Multiply(inUnit.Exact, Exact.Of(1 / rule.Step)),
            inUnit.True * Enclosure.Of(1 / rule.Step, inUnit.True.Bits), inUnit.Unit);
        Fraction rounded = new Fraction(RoundUnits(steps, 0)) * rule.Step;
        int places = Decimals.PlacesOf(rule.Step) ?? 0;
        return new(Decimals.Write(Decimals.Floor(rounded, places), places), false, inUnit.Exact?.Rational == rounded);
    }

    /// <summary>Decimal places in working: enough figures, and past a run of 0s or 9s to the digit that tells.</summary>
    private static int Places(Value value, NumberStyle style)
    {
        int figures = style.Figures - Figures(value);
        int places = style.Places > figures ? style.Places : figures;
        if (places > MostPlaces) places = MostPlaces;
        int start = places;
        while (places < MostPlaces && IsRun(CutUnits(value, places), places)) places++;
        return places > start && places < MostPlaces ? places + 1 : places;
    }

    private static bool IsRun(BigInteger units, int places)
    {
        BigInteger rest = BigInteger.Abs(units) % Decimals.Ten(places);
        return rest.ToString(System.Globalization.CultureInfo.InvariantCulture).All(d => d is '0' or '9');
    }

    /// <summary>How many digits stand before the point; 0 or less for values below 1.</summary>
    private static int Figures(Value value)
    {
        Fraction size = Ends(value).Low.Abs() is var l && Ends(value).High.Abs() is var h && l < h ? l : h;
        if (size == 0) return 1;
        int figures = 0;
        while (size >= 1) (size, figures) = (size / 10, figures + 1);
        while (size < new Fraction(1, 10)) (size, figures) = (size * 10, figures - 1);
        return figures;
    }

    private static (Fraction Low, Fraction High) Ends(Value value) =>
        value.Exact?.Rational is { } rational ? (rational, rational) : (value.True.Low, value.True.High);

    private static BigInteger CutUnits(Value value, int places) => Decided(value, v => v < 0 ? Decimals.Ceiling(v, places) : Decimals.Floor(v, places));

    private static BigInteger RoundUnits(Value value, int places) => places >= 0 ? Decided(value, v => Decimals.Round(v, places))
        : Decided(value, v => Decimals.Round(v / new Fraction(Decimals.Ten(-places)), 0));

    private static BigInteger Decided(Value value, Func<Fraction, BigInteger> digits)
    {
        (Fraction low, Fraction high) = Ends(value);
        BigInteger first = digits(low);
        return first == digits(high) ? first : throw new UndecidedException();
    }

    private static Fraction Scaled(BigInteger units, int places) =>
        places >= 0 ? new Fraction(units, Decimals.Ten(places), true) : new Fraction(units * Decimals.Ten(-places));

    private static string Written(BigInteger units, int places) =>
        places >= 0 ? Decimals.Write(units, places) : Decimals.Write(units * Decimals.Ten(-places), 0);
}
