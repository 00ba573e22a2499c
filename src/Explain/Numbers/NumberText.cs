using System.Globalization;
using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>Prints values. A digit is shown only when it is decided; otherwise there is an <see cref="UndecidedException"/>.</summary>
internal static class NumberText
{
    /// <summary>The longest decimal that is printed in full; a longer one is cut like one that does not end.</summary>
    private const int MostPlacesInFull = 15;

    private const int MostPlacesPastRun = 9;

    /// <summary>A value in working: in full when it ends, otherwise cut towards zero, never rounded.</summary>
    public static Shown Cut(Value value, NumberStyle style)
    {
        if (value.Exact?.Rational is { } rational && Decimals.PlacesOf(rational) <= MostPlacesInFull)
            return new(Decimals.InFull(rational)!, Continues: false, IsExact: true);
        int places = PastRun(value, PlacesShowing(value, style.Figures, style.Places));
        BigInteger units = CutUnits(value, places);
        return Decided.Equals(value, units * Decimals.TenTo(-places))
            ? throw new UndecidedException()
            : new(Decimals.Write(units, places), Continues: true, IsExact: false);
    }

    /// <summary>A rounded answer, halves away from zero; in full when it is exact within what is asked.</summary>
    public static Shown Rounded(Value value, Rounding rule)
    {
        Value shown = value.In(rule.UnitFor(value.Unit));
        (Fraction number, int places) = Round(shown, rule.ForDecimals(value.Unit));
        bool isExact = Decided.Equals(shown, number);
        return new(isExact ? Decimals.InFull(number)! : Decimals.Write(number, places), Continues: false, isExact);
    }

    /// <summary>The number that <see cref="Rounded"/> prints, in the unit that the rule prints.</summary>
    public static Fraction RoundedNumber(Value value, Rounding rule) => Round(value.In(rule.UnitFor(value.Unit)), rule.ForDecimals(value.Unit)).Number;

    /// <summary>A lower bound, downwards, with one place more than an answer; an end that is exact at the printed places stays.</summary>
    public static Shown LowerBound(Value value, Rounding rule) => Bound(value, rule, Down);

    /// <summary>An upper bound, upwards, with one place more than an answer; an end that is exact at the printed places stays.</summary>
    public static Shown UpperBound(Value value, Rounding rule) => Bound(value, rule, Decided.Ceiling);

    /// <summary>The number that <see cref="LowerBound"/> prints, in the unit that the rule prints.</summary>
    public static Fraction LowerNumber(Value value, Rounding rule) => BoundNumber(value, rule, Down).Number;

    /// <summary>The number that <see cref="UpperBound"/> prints, in the unit that the rule prints.</summary>
    public static Fraction UpperNumber(Value value, Rounding rule) => BoundNumber(value, rule, Decided.Ceiling).Number;

    /// <summary>The least reading that careful work can give: inwards, to a division of the ruler.</summary>
    public static Fraction LeastReading(Value value, Fraction division) => division * Decided.Ceiling(value, division.Reciprocal());

    /// <summary>The greatest reading that careful work can give: inwards, to a division of the ruler.</summary>
    public static Fraction GreatestReading(Value value, Fraction division) => division * Down(value, division.Reciprocal());

    /// <summary>The decimal places that a rounding gives a value in the rule's unit; negative for tens, hundreds …</summary>
    public static int PlacesFor(Value value, Rounding rule) => Round(value, rule.ForDecimals(value.Unit)).Places;

    private static BigInteger Down(Value value, Fraction scale) => Decided.Floor(value, scale, Fraction.Zero);

    private static Shown Bound(Value value, Rounding rule, Func<Value, Fraction, BigInteger> direction)
    {
        (Fraction number, int places) = BoundNumber(value, rule, direction);
        return new(Decimals.Write(number, places), Continues: false, Decided.Equals(value.In(rule.UnitFor(value.Unit)), number));
    }

    private static (Fraction Number, int Places) BoundNumber(Value value, Rounding rule, Func<Value, Fraction, BigInteger> direction)
    {
        Value shown = value.In(rule.UnitFor(value.Unit));
        int places = int.Max(0, PlacesFor(shown, rule) + 1);
        return (direction(shown, Decimals.TenTo(places)) * Decimals.TenTo(-places), places);
    }

    private static (Fraction Number, int Places) Round(Value value, Rounding rule)
    {
        if (rule.Kind == RoundingKind.Nearest)
            return (rule.Step * Decided.Nearest(value, rule.Step.Reciprocal()), Decimals.PlacesOf(rule.Step)!.Value);
        bool byFigures = rule.Kind == RoundingKind.SignificantFigures;
        int places = byFigures ? PlacesShowing(value, rule.Digits) : rule.Digits;
        BigInteger units = Decided.Nearest(value, Decimals.TenTo(places));

        // 9.996 to three figures is 10.0: the carry makes one figure more than asked.
        int printed = byFigures && Length(units) > rule.Digits ? places - 1 : places;
        return (units * Decimals.TenTo(-places), printed);
    }

    /// <summary>The places that show exactly so many figures; negative for large numbers.</summary>
    private static int PlacesShowing(Value value, int figures)
    {
        if (value.Exact == Exact.Zero) return figures - 1;
        int places = 0;
        BigInteger units = CutUnits(value, places);
        for (; units.IsZero; units = CutUnits(value, places)) places++;
        return places + figures - Length(units);
    }

    private static int PlacesShowing(Value value, int figures, int least) => int.Max(least, PlacesShowing(value, figures));

    /// <summary>11.999… and 0.000… say too little: go on to one figure beyond the first digit that is neither 0 nor 9.</summary>
    private static int PastRun(Value value, int places)
    {
        if (!IsRun(Decimals.Write(CutUnits(value, places), places).Split('.')[^1])) return places;
        while (places < MostPlacesPastRun)
        {
            places++;
            if (!IsRun(CutUnits(value, places).ToString(CultureInfo.InvariantCulture)[^1..])) return int.Min(places + 1, MostPlacesPastRun);
        }

        return places;
    }

    private static bool IsRun(string digits) => digits.All(d => d is '0' or '9');

    /// <summary>The value in units of a decimal place, cut towards zero.</summary>
    private static BigInteger CutUnits(Value value, int places) => Decided.IsNegative(value)
        ? Decided.Ceiling(value, Decimals.TenTo(places))
        : Down(value, Decimals.TenTo(places));

    private static int Length(BigInteger units) => BigInteger.Abs(units).ToString(CultureInfo.InvariantCulture).Length;
}
