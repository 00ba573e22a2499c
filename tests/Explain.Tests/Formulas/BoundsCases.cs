using Fractions;
using static Explain.Tests.Formulas.Make;

namespace Explain.Tests.Formulas;

/// <summary>The formulas and boxes of the rows of the table of bounds, by the first part of their ids.</summary>
internal static class BoundsCases
{
    private static readonly (Expr A, Expr B, Expr C) Sides = (Letter("a"), Letter("b"), Letter("c"));
    private static readonly (Expr A, Expr B, Expr C) Angles = (Letter("A"), Letter("B"), Letter("C"));
    private static readonly Expr Distance = Letter("d");
    private static readonly Expr Height = Sides.C / (1 / Tan(Angles.A) + 1 / Tan(Angles.B));
    private static readonly Expr FirstSide = Sides.C * Sin(Angles.B) / Sin(Angles.A + Angles.B);
    private static readonly Expr SecondSide = Sides.C * Sin(Angles.A) / Sin(Angles.A + Angles.B);
    private static readonly Expr AngleA = ArcCos((Square(Sides.B) + Square(Sides.C) - Square(Sides.A)) / (2 * Sides.B * Sides.C));

    public static Dictionary<string, (Expr Formula, Items<BoxSide> Box)> All { get; } = new()
    {
        ["B01"] = (Height, [M("c", 120, 0.5m), D("A", 62, 0.5m), D("B", 71, 0.5m)]),
        ["B02"] = (FirstSide, [M("c", 120, 0.5m), D("A", 62, 0.5m), D("B", 71, 0.5m)]),
        ["B03"] = (SecondSide, [M("c", 120, 0.5m), D("A", 62, 0.5m), D("B", 71, 0.5m)]),
        ["B04"] = (FirstSide * Cos(Angles.A), [M("c", 120, 0.5m), D("A", 62, 0.5m), D("B", 71, 0.5m)]),
        ["B05"] = (Height, [M("c", 85, 0.5m), D("A", 112, 1), D("B", 34, 1)]),
        ["B09"] = (Height, [M("c", 200, 1), D("A", 86, 0.5m), D("B", 84, 0.5m)]),
        ["B10"] = (FirstSide, [M("c", 1000, 1), D("A", 62, 2), D("B", 30, 2)]),
        ["B11"] = (FirstSide, [M("c", 120, 1), D("A", 62, 8), D("B", 30, 2)]),
        ["B12"] = (Sides.A * Sides.B * Sin(Angles.C) / 2, [M("b", 40, 0.5m), M("a", 30, 0.5m), D("C", 88, 3)]),
        ["B13"] = (Root(Square(Sides.A) + Square(Sides.B) - 2 * Sides.A * Sides.B * Cos(Angles.C)), [M("a", 5, 1), M("b", 10, 0.1m), D("C", 60, 2)]),
        ["B14"] = (AngleA, [M("a", 6, 0.5m), M("b", 7, 0.5m), M("c", 10, 0.5m)]),
        ["B15"] = (Sides.B * Cos(Angles.A) + Root(Square(Sides.A) - Square(Sides.B * Sin(Angles.A))), [D("A", 38, 1), M("b", 27, 3), M("a", 20, 0.5m)]),
        ["B16"] = (ArcTan(Make.M("4.5") / Distance) - ArcTan(Make.M("1.5") / Distance), [M("d", 2.6m, 0.8m)]),
        ["B17"] = (Sides.A / (2 * Sin(Angles.A)), [M("a", 24, 0.2m), D("A", 87, 5)]),
        ["B19"] = (Letter("b") * Letter("e") / Letter("c"), [M("b", 36, 0.05m), M("c", 9, 0.05m), M("e", 14.5m, 0.05m)]),
        ["B22"] = (Opposite("a", "b", "c"), ThreeSides),
        ["B23"] = (Opposite("b", "c", "a"), ThreeSides),
        ["B24"] = (Opposite("c", "a", "b"), ThreeSides),
        ["B32"] = (ArcTan(Make.M("6") / Distance) - ArcTan(Make.M("2") / Distance), [M("d", 3.3m, 0.7m)]),
        ["B34"] = (2 * Square(Make.M("10")) * Sin(Angles.A) * Sin(Angles.B) * Sin(Angles.A + Angles.B), [D("A", 60, 5), D("B", 60, 5)]),
        ["F120"] = (Excess(30), [D("A", 30, 1), D("B", 30, 1)]),
        ["F90"] = (Excess(45), [D("A", 45, 1), D("B", 45, 1)]),
        ["F60"] = (Excess(60), [D("A", 60, 1), D("B", 60, 1)]),
        ["F30"] = (Excess(75), [D("A", 75, 1), D("B", 75, 1)]),
        ["F20"] = (Excess(80), [D("A", 80, 1), D("B", 80, 1)]),
        ["F10"] = (Excess(85), [D("A", 85, 1), D("B", 85, 1)]),
    };

    public static BoxSide M(string letter, decimal value, decimal within) => Side(letter, value, within, Unit.Metre);

    public static BoxSide D(string letter, decimal value, decimal within) => Side(letter, value, within, Unit.Degree);

    private static Items<BoxSide> ThreeSides => [Side("c", 9.5m, 0.05m, Unit.Centimetre), Side("a", 7, 0.05m, Unit.Centimetre), Side("b", 6, 0.05m, Unit.Centimetre)];

    private static BoxSide Side(string letter, decimal value, decimal within, Unit unit) =>
        new(new Letter(letter), Fraction.FromDecimal(value - within), Fraction.FromDecimal(value + within), unit);

    private static Expr Opposite(string a, string b, string c) =>
        ArcCos((Square(Letter(b)) + Square(Letter(c)) - Square(Letter(a))) / (2 * Letter(b) * Letter(c)));

    /// <summary>By how many per cent the height is greater than with both angles as measured.</summary>
    private static Expr Excess(int angle) => 100 * (2 / Tan(Expr.Degrees(angle)) / (1 / Tan(Angles.A) + 1 / Tan(Angles.B)) - 1);
}
