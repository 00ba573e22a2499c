namespace Explain;

/// <summary>Bearings, clockwise from north; north lines are parallel.</summary>
internal static partial class BearingRules
{
    [Rule("angle-between-bearings", When = ["ABC is a triangle", "the bearing of B from A < the bearing of C from A", "the bearing of C from A - the bearing of B from A < 180°"],
        Roles = ["at: A"], Source = "definition of a bearing; common practice, no source")]
    [Relation]
    public static (double, double) AngleBetweenBearings(
        [Quantity("angle BAC")] double angle, [Quantity("the bearing of C from A")] double larger, [Quantity("the bearing of B from A")] double smaller) =>
        (angle, larger - smaller);

    [Rule("angle-across-north", When = ["ABC is a triangle", "the bearing of C from A - the bearing of B from A > 180°"],
        Roles = ["at: A"], Source = "definition of a bearing; common practice, no source")]
    [Relation]
    public static (double, double) AngleAcrossNorth(
        [Quantity("angle BAC")] double angle, [Quantity("the bearing of C from A")] double larger, [Quantity("the bearing of B from A")] double smaller) =>
        (angle, 360 - (larger - smaller));

    [Rule("back-bearing", When = ["ABC is a triangle", "the bearing of B from A < 180°"], Roles = ["from: A", "to: B"],
        Source = "north lines are parallel: Euclid, Elements, I.29; common practice, no source")]
    [Relation]
    public static (double, double) BackBearing([Quantity("the bearing of A from B")] double back, [Quantity("the bearing of B from A")] double there) =>
        (back, there + 180);

    [Rule("back-bearing-of-a-large-bearing", When = ["ABC is a triangle", "the bearing of B from A ≥ 180°"], Roles = ["from: A", "to: B"],
        Source = "north lines are parallel: Euclid, Elements, I.29; common practice, no source")]
    [Relation]
    public static (double, double) BackBearingOfALargeBearing([Quantity("the bearing of A from B")] double back, [Quantity("the bearing of B from A")] double there) =>
        (back, there - 180);

    [Rule("bearing-by-turning-clockwise", When = ["ABC goes clockwise", "the bearing of B from A + angle BAC < 360°"], Roles = ["at: A", "first: B", "second: C"],
        Source = "definition of a bearing; common practice, no source")]
    [Relation]
    public static (double, double) Clockwise(
        [Quantity("the bearing of C from A")] double bearing, [Quantity("the bearing of B from A")] double start, [Quantity("angle BAC")] double angle) =>
        (bearing, start + angle);

    [Rule("bearing-by-turning-past-north", When = ["ABC goes clockwise", "the bearing of B from A + angle BAC ≥ 360°"], Roles = ["at: A", "first: B", "second: C"],
        Source = "definition of a bearing; common practice, no source")]
    [Relation]
    public static (double, double) PastNorth(
        [Quantity("the bearing of C from A")] double bearing, [Quantity("the bearing of B from A")] double start, [Quantity("angle BAC")] double angle) =>
        (bearing, start + angle - 360);

    [Rule("bearing-by-turning-anticlockwise", When = ["ABC goes anticlockwise", "the bearing of B from A ≥ angle BAC"], Roles = ["at: A", "first: B", "second: C"],
        Source = "definition of a bearing; common practice, no source")]
    [Relation]
    public static (double, double) Anticlockwise(
        [Quantity("the bearing of C from A")] double bearing, [Quantity("the bearing of B from A")] double start, [Quantity("angle BAC")] double angle) =>
        (bearing, start - angle);

    [Rule("bearing-by-turning-back-past-north", When = ["ABC goes anticlockwise", "the bearing of B from A < angle BAC"], Roles = ["at: A", "first: B", "second: C"],
        Source = "definition of a bearing; common practice, no source")]
    [Relation]
    public static (double, double) BackPastNorth(
        [Quantity("the bearing of C from A")] double bearing, [Quantity("the bearing of B from A")] double start, [Quantity("angle BAC")] double angle) =>
        (bearing, start - angle + 360);
}
