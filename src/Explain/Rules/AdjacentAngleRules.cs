namespace Explain;

/// <summary>Angles side by side at one point.</summary>
internal static partial class AdjacentAngleRules
{
    [Rule("angles-at-a-point-of-a-line", When = ["B is on AD", "ABC is a triangle"], Roles = ["line: AD", "at: B"], Source = "Euclid, Elements, I.13")]
    [Relation]
    public static (double, double) OnALine([Quantity("angle ABC")] double first, [Quantity("angle CBD")] double second) =>
        (first + second, 180);

    [Rule("angle-by-subtraction", When = ["T and S are on the same side of PQ", "angle QPT < angle QPS"], Roles = ["one: T", "another: S", "line: PQ", "at: P"],
        Source = "Euclid, Elements, common notion 3")]
    [Relation]
    public static (double, double) Subtracted(
        [Quantity("angle TPS")] double between, [Quantity("angle QPS")] double whole, [Quantity("angle QPT")] double part) =>
        (between, whole - part);

    [Rule("angle-by-addition", When = ["T and S are on opposite sides of PQ", "angle QPT + angle QPS < 180°"], Roles = ["one: T", "another: S", "line: PQ", "at: P"],
        Source = "Euclid, Elements, common notion 2")]
    [Relation]
    public static (double, double) Added(
        [Quantity("angle TPS")] double whole, [Quantity("angle QPT")] double first, [Quantity("angle QPS")] double second) =>
        (whole, first + second);

    [Rule("angle-round-the-other-way", When = ["T and S are on opposite sides of PQ", "angle QPT + angle QPS > 180°"], Roles = ["one: T", "another: S", "line: PQ", "at: P"],
        Source = "angles at a point, consequence of Euclid, Elements, I.13")]
    [Relation]
    public static (double, double) RoundTheOtherWay(
        [Quantity("angle TPS")] double between, [Quantity("angle QPT")] double first, [Quantity("angle QPS")] double second) =>
        (between, 360 - first - second);
}
