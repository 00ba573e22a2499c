using static Explain.DegreeTrigonometry;

namespace Explain;

/// <summary>From a sine, cosine or tangent back to the angle of a triangle.</summary>
[Rule("angles-with-one-sine", When = ["ABC is a triangle"], Then = "angle ABC < 90° or angle ABC > 90°", Roles = ["angle: angle ABC"],
    Source = "sin (180° − x) = sin x; common practice, no source")]
[Rule("not-acute", When = ["ABC is a triangle", "given: angle ABC is acute", "angle ABC > 90°"], Then = "angle ABC > 90°", Roles = ["angle: angle ABC"],
    Source = "Euclid, Elements, I. definitions 11 and 12")]
[Rule("not-obtuse", When = ["ABC is a triangle", "given: angle ABC is obtuse", "angle ABC < 90°"], Then = "angle ABC < 90°", Roles = ["angle: angle ABC"],
    Source = "Euclid, Elements, I. definitions 11 and 12")]
internal static partial class InverseRules
{
    [Rule("angle-from-cosine", When = ["ABC is a triangle"], Source = "the cosine falls all the way from 0° to 180°; common practice, no source")]
    [Relation]
    public static (double, double) AngleFromCosine([Quantity("angle ABC")] double angle, [Quantity("cos ABC")] double ratio) =>
        (angle, Acos(ratio));

    [Rule("angle-from-sine", When = ["ABC is a triangle"], Source = "Euclid, Elements, III.21 in modern dress; common practice, no source")]
    [Relation]
    public static (double, double) AngleFromSine([Quantity("angle ABC")] double angle, [Quantity("sin ABC")] double ratio) =>
        (angle, Asin(ratio));

    [Rule("acute-angle-opposite-a-shorter-side", When = ["ABC is a triangle", "BC ≤ CA"], Roles = ["side: BC", "other: CA"],
        Source = "Euclid, Elements, I.17 and I.18")]
    [Relation]
    public static (double, double) AcuteAngleOppositeAShorterSide([Quantity("angle BAC")] double angle, [Quantity("sin BAC")] double ratio) =>
        (angle, Asin(ratio));

    [Rule("supplement-from-sine", When = ["ABC is a triangle"], Source = "sin (180° − x) = sin x; common practice, no source")]
    [Relation]
    public static (double, double) SupplementFromSine([Quantity("angle ABC")] double angle, [Quantity("sin ABC")] double ratio) =>
        (angle, 180 - Asin(ratio));
}
