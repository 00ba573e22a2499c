using static Explain.DegreeTrigonometry;

namespace Explain;

/// <summary>Right-angled triangles, and the ratios of their sides.</summary>
internal static partial class RightAngleRules
{
    [Rule("sine-ratio", When = ["angle ABC is a right angle"], Roles = ["triangle: ABC", "corner: B"],
        Source = "OpenStax, Precalculus 2e, section 5.4")]
    [Relation]
    public static (double, double) SineRatio(
        [Quantity("angle BAC")] double angle, [Quantity("BC")] double opposite, [Quantity("CA")] double hypotenuse) =>
        (Sin(angle), opposite / hypotenuse);

    [Rule("cosine-ratio", When = ["angle ABC is a right angle"], Roles = ["triangle: ABC", "corner: B"],
        Source = "OpenStax, Precalculus 2e, section 5.4")]
    [Relation]
    public static (double, double) CosineRatio(
        [Quantity("angle BAC")] double angle, [Quantity("AB")] double adjacent, [Quantity("CA")] double hypotenuse) =>
        (Cos(angle), adjacent / hypotenuse);

    [Rule("tangent-ratio", When = ["angle ABC is a right angle"], Roles = ["triangle: ABC", "corner: B"],
        Source = "OpenStax, Precalculus 2e, section 5.4")]
    [Relation]
    public static (double, double) TangentRatio(
        [Quantity("angle BAC")] double angle, [Quantity("BC")] double opposite, [Quantity("AB")] double adjacent) =>
        (Tan(angle), opposite / adjacent);

    [Rule("pythagoras", When = ["angle ABC is a right angle"], Roles = ["triangle: ABC", "corner: B"],
        Source = "Euclid, Elements, I.47")]
    [Relation]
    public static (double, double) Pythagoras(
        [Quantity("CA")] double hypotenuse, [Quantity("AB")] double first, [Quantity("BC")] double second) =>
        (hypotenuse * hypotenuse, first * first + second * second);

    [Rule("acute-angles-of-a-right-angled-triangle", When = ["ABC is a triangle", "angle ABC is a right angle"], Roles = ["corner: B"],
        Source = "consequence of Euclid, Elements, I.32")]
    [Relation]
    public static (double, double) AcuteAngles([Quantity("angle BAC")] double first, [Quantity("angle ACB")] double second) => (first + second, 90);

    [Rule("pythagoras-converse", When = ["ABC is a triangle", "CA² = AB² + BC²"], Roles = ["hypotenuse: CA", "first: AB", "second: BC"],
        Source = "Euclid, Elements, I.48")]
    [Relation]
    public static (double, double) PythagorasConverse([Quantity("angle ABC")] double angle) => (angle, 90);

    [Rule("acute-angle-from-sine", When = ["ABC is a triangle", "angle ABC is a right angle"], Roles = ["corner: B"], Source = "Euclid, Elements, I.17")]
    [Relation]
    public static (double, double) AcuteAngleFromSine([Quantity("angle BAC")] double angle, [Quantity("sin BAC")] double ratio) => (angle, Asin(ratio));

    [Rule("angle-from-tangent", When = ["ABC is a triangle", "angle ABC is a right angle"], Roles = ["corner: B"], Source = "Euclid, Elements, I.17")]
    [Relation]
    public static (double, double) AngleFromTangent([Quantity("angle BAC")] double angle, [Quantity("tan BAC")] double ratio) => (angle, Atan(ratio));
}
