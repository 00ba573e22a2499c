using System.Globalization;

namespace Explain;

/// <summary>
/// Writes values as a problem file has them: <c>Metres(120, within: 0.5)</c> is "120 m ± 0.5 m". A number stands for the shortest
/// decimal that names it, the one that was typed, so 0.1 is exactly a tenth.
/// </summary>
public static class Units
{
    /// <summary>A length in millimetres.</summary>
    public static string Millimetres(double number, double? within = null) => Value(number, within, " mm");

    /// <summary>A length in centimetres.</summary>
    public static string Centimetres(double number, double? within = null) => Value(number, within, " cm");

    /// <summary>A length in metres.</summary>
    public static string Metres(double number, double? within = null) => Value(number, within, " m");

    /// <summary>A length in kilometres.</summary>
    public static string Kilometres(double number, double? within = null) => Value(number, within, " km");

    /// <summary>A length in inches.</summary>
    public static string Inches(double number, double? within = null) => Value(number, within, " in");

    /// <summary>A length in feet.</summary>
    public static string Feet(double number, double? within = null) => Value(number, within, " ft");

    /// <summary>A length in yards.</summary>
    public static string Yards(double number, double? within = null) => Value(number, within, " yd");

    /// <summary>A length in miles.</summary>
    public static string Miles(double number, double? within = null) => Value(number, within, " mi");

    /// <summary>An angle in degrees.</summary>
    public static string Degrees(double number, double? within = null) => Value(number, within, "°");

    /// <summary>A length in feet and inches.</summary>
    public static string FeetAndInches(int feet, double inches) => Number(feet) + " ft " + Number(inches) + " in";

    private static string Value(double number, double? within, string unit) =>
        Number(number) + unit + (within is { } margin ? " ± " + Number(margin) + unit : "");

    private static string Number(double number) => number.ToString("R", CultureInfo.InvariantCulture);
}
