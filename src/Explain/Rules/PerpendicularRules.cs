using static Explain.DegreeTrigonometry;

namespace Explain;

/// <summary>The perpendicular from a point to a line, and where its foot lies.</summary>
[Rule("foot-of-a-perpendicular", When = ["PQT is a triangle"], Then = "F is the foot of the perpendicular from T to PQ",
    Roles = ["foot: F", "point: T", "line: PQ"], Source = "Euclid, Elements, I.12")]
[Rule("foot-between", When = ["F is the foot of the perpendicular from T to PQ", "angle QPT < 90°", "angle PQT < 90°"], Then = "F is on PQ",
    Roles = ["foot: F", "first: P", "second: Q"], Source = "consequence of Euclid, Elements, I.17")]
[Rule("foot-beyond", When = ["F is the foot of the perpendicular from T to PQ", "angle PQT > 90°"], Then = "F is on PQ produced",
    Roles = ["foot: F", "first: P", "second: Q", "angle: angle PQT"], Source = "consequence of Euclid, Elements, I.17")]
internal static partial class PerpendicularRules
{
    [Rule("shortest-distance", When = ["F is the foot of the perpendicular from T to PQ"], Roles = ["point: T", "line: PQ"],
        Source = "Euclid, Elements, I.19 applied to the right-angled triangle; from memory")]
    [Relation]
    public static (double, double) ShortestDistance(
        [Quantity("distance from T to PQ")] double distance, [Quantity("TF")] double perpendicular) =>
        (distance, perpendicular);

    [Rule("perpendicular-side", When = ["angle PQT = 90°"], Roles = ["point: T", "line: PQ", "corner: Q"],
        Source = "Euclid, Elements, I.19 applied to the right-angled triangle; from memory")]
    [Relation]
    public static (double, double) PerpendicularSide(
        [Quantity("distance from T to PQ")] double distance, [Quantity("TQ")] double perpendicular) =>
        (distance, perpendicular);

    [Rule("parts-of-a-segment", When = ["F is on PQ"], Roles = ["point: F"], Source = "Euclid, Elements, common notion 2")]
    [Relation]
    public static (double, double) PartsOfASegment(
        [Quantity("PF")] double first, [Quantity("FQ")] double second, [Quantity("PQ")] double whole) =>
        (first + second, whole);

    [Rule("height-on-a-baseline", When = ["F is the foot of the perpendicular from T to PQ", "F is on PQ"], Roles = ["foot: F"],
        Source = "tangent ratio in both right-angled triangles; derived in docs/mathematics.md")]
    [Relation]
    public static (double, double) HeightOnABaseline(
        [Quantity("TF")] double height, [Quantity("angle QPT")] double first, [Quantity("angle PQT")] double second, [Quantity("PQ")] double baseline) =>
        (height / Tan(first) + height / Tan(second), baseline);
}
