using static Explain.DegreeTrigonometry;

namespace Explain;

/// <summary>The area of a triangle and its perimeter.</summary>
internal static partial class AreaRules
{
    [Rule("area-from-two-sides", When = ["ABC is a triangle"], Marks = 2, Source = "OpenStax, Precalculus 2e, section 8.1")]
    [Relation]
    public static (double, double) AreaFromTwoSides(
        [Quantity("area of ABC")] double area, [Quantity("AB")] double first, [Quantity("CA")] double second, [Quantity("angle BAC")] double between) =>
        (area, 1.0 / 2 * first * second * Sin(between));

    [Rule("area-from-legs", When = ["ABC is a triangle", "angle ABC is a right angle"], Roles = ["corner: B", "triangle: ABC"], Source = "Euclid, Elements, I.41")]
    [Relation]
    public static (double, double) AreaFromLegs([Quantity("area of ABC")] double area, [Quantity("AB")] double first, [Quantity("BC")] double second) =>
        (area, 1.0 / 2 * first * second);

    [Rule("area-from-base-and-height", When = ["ABC is a triangle"], Roles = ["line: AB", "point: C"], Source = "Euclid, Elements, I.41")]
    [Relation]
    public static (double, double) AreaFromBaseAndHeight(
        [Quantity("area of ABC")] double area, [Quantity("AB")] double side, [Quantity("distance from C to AB")] double height) =>
        (area, 1.0 / 2 * side * height);

    [Rule("area-from-a-side-and-the-angles", When = ["ABC is a triangle"], Marks = 2,
        Source = "two sides by the sine rule put into half their product times the sine; derived here")]
    [Relation]
    public static (double, double) AreaFromASideAndTheAngles(
        [Quantity("AB")] double side, [Quantity("area of ABC")] double area,
        [Quantity("angle CAB")] double first, [Quantity("angle ABC")] double second, [Quantity("angle BCA")] double opposite) =>
        (area, side * side * Sin(first) * Sin(second) / (2 * Sin(opposite)));

    [Rule("herons-formula", When = ["ABC is a triangle"], Marks = 2, Source = "OpenStax, Precalculus 2e, section 8.2")]
    [Relation]
    public static (double, double) HeronsFormula(
        [Quantity("area of ABC")] double area, [Quantity("half the perimeter of ABC")] double half,
        [Quantity("BC")] double first, [Quantity("CA")] double second, [Quantity("AB")] double third) =>
        (area * area, half * (half - first) * (half - second) * (half - third));

    [Rule("half-perimeter-from-sides", When = ["ABC is a triangle"], Roles = ["triangle: ABC"], Source = "Euclid, Elements, common notion 2")]
    [Relation]
    public static (double, double) HalfPerimeterFromSides(
        [Quantity("half the perimeter of ABC")] double half, [Quantity("BC")] double first, [Quantity("CA")] double second, [Quantity("AB")] double third) =>
        (half, 1.0 / 2 * (first + second + third));

    [Rule("half-perimeter", When = ["ABC is a triangle"], Roles = ["triangle: ABC"], Source = "Euclid, Elements, common notion 2")]
    [Relation]
    public static (double, double) HalfPerimeter([Quantity("half the perimeter of ABC")] double half, [Quantity("perimeter of ABC")] double perimeter) =>
        (half, 1.0 / 2 * perimeter);

    [Rule("perimeter-of-a-triangle", When = ["ABC is a triangle"], Source = "Euclid, Elements, common notion 2")]
    [Relation]
    public static (double, double) Perimeter(
        [Quantity("perimeter of ABC")] double perimeter, [Quantity("AB")] double first, [Quantity("BC")] double second, [Quantity("CA")] double third) =>
        (perimeter, first + second + third);

    [Rule("perimeter-of-an-isosceles-triangle", When = ["ABC is a triangle", "AB = AC"], Roles = ["triangle: ABC"], Source = "Euclid, Elements, common notion 2")]
    [Relation]
    public static (double, double) PerimeterOfAnIsoscelesTriangle(
        [Quantity("perimeter of ABC")] double perimeter, [Quantity("AB")] double equal, [Quantity("BC")] double third) =>
        (perimeter, 2 * equal + third);

    [Rule("perimeter-of-an-equilateral-triangle", When = ["ABC is an equilateral triangle"], Roles = ["triangle: ABC"], Source = "Euclid, Elements, common notion 2")]
    [Relation]
    public static (double, double) PerimeterOfAnEquilateralTriangle([Quantity("perimeter of ABC")] double perimeter, [Quantity("AB")] double side) =>
        (perimeter, 3 * side);

    [Rule("perimeter-and-an-angle", When = ["ABC is a triangle"], Marks = 3,
        Source = "cosine rule with what the other sides leave of the perimeter; derived here")]
    [Relation]
    public static (double, double) PerimeterAndAnAngle(
        [Quantity("CA")] double other, [Quantity("perimeter of ABC")] double perimeter, [Quantity("AB")] double side, [Quantity("angle BAC")] double between) =>
        (perimeter * (perimeter - 2 * side), 2 * other * (perimeter - side - side * Cos(between)));

    [Rule("perimeter-and-sines", When = ["ABC is a triangle"], Marks = 2,
        Source = "sine rule: the sides are in the ratio of the sines; derived here")]
    [Relation]
    public static (double, double) PerimeterAndSines(
        [Quantity("BC")] double side, [Quantity("perimeter of ABC")] double perimeter,
        [Quantity("angle BAC")] double opposite, [Quantity("angle ABC")] double first, [Quantity("angle BCA")] double second) =>
        (side / Sin(opposite), perimeter / (Sin(opposite) + Sin(first) + Sin(second)));
}
