using static Explain.DegreeTrigonometry;

namespace Explain;

/// <summary>The perpendicular from a point to a line, and where its foot lies.</summary>
[Rule("foot-of-a-perpendicular", When = ["PQT is a triangle"], Then = "F is the foot of the perpendicular from T to PQ",
    Roles = ["foot: F", "point: T", "line: PQ"], Source = "Euclid, Elements, I.12")]
[Rule("foot-between", When = ["F is the foot of the perpendicular from T to PQ", "angle QPT < 90°", "angle PQT < 90°"], Then = "F is on PQ",
    Roles = ["foot: F", "first: P", "second: Q"], Source = "consequence of Euclid, Elements, I.17")]
[Rule("foot-beyond", When = ["F is the foot of the perpendicular from T to PQ", "angle PQT > 90°"], Then = "F is on PQ produced",
    Roles = ["foot: F", "first: P", "second: Q", "angle: angle PQT"], Source = "consequence of Euclid, Elements, I.17")]
[Rule("shortest-distance", When = ["F is the foot of the perpendicular from T to PQ"], Then = "the distance from T to PQ = TF",
    Roles = ["point: T", "line: PQ", "perpendicular: TF"], Source = "Euclid, Elements, I.19 applied to the right-angled triangle; from memory")]
[Rule("perpendicular-side", When = ["PQT is a triangle", "angle PQT = 90°"], Then = "the distance from T to PQ = TQ",
    Roles = ["point: T", "line: PQ", "corner: Q", "angle: angle PQT", "perpendicular: TQ"], Source = "Euclid, Elements, I.19 applied to the right-angled triangle; from memory")]
internal static partial class PerpendicularRules
{
    [Rule("parts-of-a-segment", When = ["F is on PQ"], Roles = ["point: F"], Source = "Euclid, Elements, common notion 2")]
    [Relation]
    public static (double, double) PartsOfASegment(
        [Quantity("PF")] double first, [Quantity("FQ")] double second, [Quantity("PQ")] double whole) =>
        (first + second, whole);

    [Rule("whole-less-a-part", When = ["F is on PQ produced"], Roles = ["point: F", "end: Q"], Source = "Euclid, Elements, common notion 3")]
    [Relation]
    public static (double, double) WholeLessAPart(
        [Quantity("PQ")] double rest, [Quantity("PF")] double whole, [Quantity("QF")] double part) =>
        (rest, whole - part);

    [Rule("distance-by-sine", When = ["PQT is a triangle"], Roles = ["triangle: PQT", "line: PQ", "point: T"],
        Source = "sine ratio in the right-angled triangle of the foot, and sin (180° − x) = sin x; common practice, no source")]
    [Relation]
    public static (double, double) DistanceBySine(
        [Quantity("distance from T to PQ")] double distance, [Quantity("PT")] double side, [Quantity("angle QPT")] double angle) =>
        (distance, side * Sin(angle));

    [Rule("height-on-a-baseline", When = ["F is the foot of the perpendicular from T to PQ", "F is on PQ", "PF = TF / tan QPT", "FQ = TF / tan PQT"],
        Roles = ["foot: F", "start: PF", "rest: FQ"],
        Source = "tangent ratio in both right-angled triangles; common practice, no source")]
    [Relation]
    public static (double, double) HeightOnABaseline(
        [Quantity("TF")] double height, [Quantity("angle QPT")] double first, [Quantity("angle PQT")] double second, [Quantity("PQ")] double baseline) =>
        (height / Tan(first) + height / Tan(second), baseline);

    [Rule("height-beyond-a-baseline", When = ["F is the foot of the perpendicular from T to PQ", "F is on PQ produced"], Roles = ["foot: F", "whole: PF", "part: QF"],
        Source = "tangent ratio in both right-angled triangles; common practice, no source")]
    [Relation]
    public static (double, double) HeightBeyondABaseline(
        [Quantity("TF")] double height, [Quantity("angle QPT")] double first, [Quantity("angle PQT")] double second, [Quantity("PQ")] double baseline) =>
        (height / Tan(first) - height / Tan(180 - second), baseline);
}
