namespace Explain;

/// <summary>Triangles with equal sides or equal angles.</summary>
internal static partial class IsoscelesRules
{
    [Rule("equal-sides", When = ["ABC is a triangle", "AB = AC"], Source = "Euclid, Elements, I. definition 20")]
    [Relation]
    public static (double, double) EqualSides([Quantity("AB")] double first, [Quantity("AC")] double second) => (first, second);

    [Rule("isosceles-triangle", When = ["ABC is a triangle", "AB = AC"], Roles = ["side: AB", "other: AC"], Source = "Euclid, Elements, I.5")]
    [Relation]
    public static (double, double) BaseAngles([Quantity("angle ABC")] double first, [Quantity("angle ACB")] double second) => (first, second);

    [Rule("isosceles-angle-sum", When = ["ABC is a triangle", "AB = AC"], Roles = ["side: AB", "other: AC"], Source = "Euclid, Elements, I.5 and I.32")]
    [Relation]
    public static (double, double) AngleSum([Quantity("angle ABC")] double atBase, [Quantity("angle BAC")] double apex) => (2 * atBase + apex, 180);

    [Rule("equal-angles", When = ["ABC is a triangle", "angle ABC = angle ACB"], Source = "Euclid, Elements, common notion 1")]
    [Relation]
    public static (double, double) EqualAngles([Quantity("angle ABC")] double first, [Quantity("angle ACB")] double second) => (first, second);

    [Rule("isosceles-triangle-converse", When = ["ABC is a triangle", "angle ABC = angle ACB"], Roles = ["angle: angle ABC", "other: angle ACB"],
        Source = "Euclid, Elements, I.6")]
    [Relation]
    public static (double, double) SidesOppositeEqualAngles([Quantity("AB")] double first, [Quantity("AC")] double second) => (first, second);

    [Rule("equal-angles-sum", When = ["ABC is a triangle", "angle ABC = angle ACB"], Source = "Euclid, Elements, I.32")]
    [Relation]
    public static (double, double) EqualAnglesSum([Quantity("angle ABC")] double equal, [Quantity("angle BAC")] double third) => (2 * equal + third, 180);

    [Rule("equilateral-triangle-angles", When = ["ABC is an equilateral triangle"], Source = "consequence of Euclid, Elements, I.5 and I.32")]
    [Relation]
    public static (double, double) EquilateralAngle([Quantity("angle ABC")] double angle) => (angle, 60);
}
