using static Explain.DegreeTrigonometry;

namespace Explain;

/// <summary>The circle inside a triangle that touches its sides, and the circle through its corners.</summary>
internal static partial class CircleRules
{
    [Rule("radius-of-the-inscribed-circle", When = ["ABC is a triangle"], Marks = 2, Roles = ["triangle: ABC"],
        Source = "Corral M., Trigonometry, version 1.2, section 2.5")]
    [Relation]
    public static (double, double) RadiusOfTheInscribedCircle(
        [Quantity("radius of the inscribed circle of ABC")] double radius, [Quantity("area of ABC")] double area, [Quantity("half the perimeter of ABC")] double half) =>
        (area, half * radius);

    [Rule("inscribed-circle-on-a-side", When = ["ABC is a triangle"], Marks = 2, Roles = ["first: A", "second: B"],
        Source = "Euclid, Elements, IV.4, with the tangent ratio in the two right-angled triangles at a side; derived here")]
    [Relation]
    public static (double, double) InscribedCircleOnASide(
        [Quantity("radius of the inscribed circle of ABC")] double radius, [Quantity("AB")] double side,
        [Quantity("angle CAB")] double atFirst, [Quantity("angle ABC")] double atSecond) =>
        (radius / Tan(atFirst / 2) + radius / Tan(atSecond / 2), side);

    [Rule("sine-rule-and-circle", When = ["ABC is a triangle"], Marks = 2, Roles = ["triangle: ABC"],
        Source = "Corral M., Trigonometry, version 1.2, section 2.5")]
    [Relation]
    public static (double, double) SineRuleAndCircle(
        [Quantity("radius of the circle through ABC")] double radius, [Quantity("BC")] double side, [Quantity("angle BAC")] double opposite) =>
        (side / Sin(opposite), 2 * radius);

    [Rule("diameter-of-a-circle", When = ["ABC is a triangle"], Source = "Euclid, Elements, I. definition 17")]
    [Relation]
    public static (double, double) DiameterOfACircle(
        [Quantity("diameter of the circle through ABC")] double diameter, [Quantity("radius of the circle through ABC")] double radius) =>
        (diameter, 2 * radius);

    [Rule("circle-through-the-corners-and-area", When = ["ABC is a triangle"], Marks = 2,
        Source = "Corral M., Trigonometry, version 1.2, section 2.5")]
    [Relation]
    public static (double, double) CircleThroughTheCornersAndArea(
        [Quantity("radius of the circle through ABC")] double radius, [Quantity("area of ABC")] double area,
        [Quantity("BC")] double first, [Quantity("CA")] double second, [Quantity("AB")] double third) =>
        (radius, first * second * third / (4 * area));
}
