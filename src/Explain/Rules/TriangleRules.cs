using static Explain.DegreeTrigonometry;

namespace Explain;

/// <summary>Sides and angles of any triangle.</summary>
[Rule("room-for-a-third-angle", When = ["ABC is a triangle", "angle CAB + angle ABC < 180°"], Then = "angle CAB + angle ABC < 180°",
    Roles = ["first: angle CAB", "second: angle ABC"], Source = "Euclid, Elements, I.17")]
[Rule("no-room-for-a-third-angle", When = ["ABC is a triangle", "angle CAB + angle ABC ≥ 180°"], Then = "angle CAB + angle ABC ≥ 180°",
    Roles = ["first: angle CAB", "second: angle ABC"], Source = "Euclid, Elements, I.17")]
[Rule("longest-side", When = ["ABC is a triangle", "AB ≥ BC", "AB ≥ CA", "AB < BC + CA"], Then = "1 triangle ABC",
    Roles = ["longest: AB", "first: BC", "second: CA"], Source = "Euclid, Elements, I.20 and I.22")]
internal static partial class TriangleRules
{
    [Rule("angle-sum-of-a-triangle", When = ["ABC is a triangle"], Roles = ["triangle: ABC"], Source = "Euclid, Elements, I.32")]
    [Relation]
    public static (double, double) AngleSum(
        [Quantity("angle CAB")] double first, [Quantity("angle ABC")] double second, [Quantity("angle BCA")] double third) =>
        (first + second + third, 180);

    [Rule("sine-rule", When = ["ABC is a triangle"], Marks = 2,
        Source = "OpenStax, Precalculus 2e, section 8.1")]
    [Relation]
    public static (double, double) SineRule(
        [Quantity("BC")] double side, [Quantity("angle BAC")] double opposite,
        [Quantity("CA")] double other, [Quantity("angle ABC")] double otherOpposite) =>
        (side / Sin(opposite), other / Sin(otherOpposite));

    [Rule("cosine-rule", When = ["ABC is a triangle"], Marks = 2,
        Source = "OpenStax, Precalculus 2e, section 8.2")]
    [Relation]
    public static (double, double) CosineRule(
        [Quantity("BC")] double side, [Quantity("CA")] double first, [Quantity("AB")] double second, [Quantity("angle BAC")] double between) =>
        (side * side, first * first + second * second - 2 * first * second * Cos(between));

    [Rule("projections-of-sides", When = ["ABC is a triangle"],
        Source = "consequence of Euclid, Elements, II.12 and II.13; from memory")]
    [Relation]
    public static (double, double) Projections(
        [Quantity("AB")] double side, [Quantity("CA")] double first, [Quantity("angle CAB")] double atFirst,
        [Quantity("BC")] double second, [Quantity("angle ABC")] double atSecond) =>
        (side, first * Cos(atFirst) + second * Cos(atSecond));
}
