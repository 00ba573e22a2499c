namespace Explain.Tests.Documents.Samples;

/// <summary>Words of the rules and phrases of the sample solutions.</summary>
internal static class SampleWords
{
    private const string UnitedKingdom = """
        sample-angle-sum: the angles of a triangle add up to 180°
        sample-sine-rule: "sine rule: each side divided by the sine of the angle opposite it gives the same value. {side} is opposite {angle}; {known} is opposite {across}"
        sample-sine-rule.again: sine rule again. {side} is opposite {angle}
        sample-sine-ratio: triangle {triangle} has a right angle at {corner}, and {side} is opposite {angle}
        sample-foot-inside: the angles {first} and {second} are both acute, so the foot lies between them
        sample-shortest-way: the perpendicular is the shortest way from a point to a straight line, so the distance is {height}
        sample-two-right-triangles: in the right-angled triangles on either side of {height}, each part of {base} is {height} divided by the tangent of the angle at its end
        sample-larger-numerator: the divisor stays the same
        sample-larger-tangent: a larger acute angle has a larger tangent, so the divisor is smaller
        sample-monotone-corners: all upper bounds give the greatest value and all lower bounds the least ({steps})
        sample-cosine-ratio: in the right-angled triangle at {foot}, {part} is next to {angle}
        sample-parts-of-segment: "{foot} lies between {first} and {second}"
        sample-same-sine: between 0° and 180°, an acute angle and its supplement have the same sine
        sample-sine-inverse: undo the sine
        sample-less-than-straight: two angles of a triangle add up to less than 180°
        sample-compare-height: the values are compared ({steps})
        sample-reaches-twice: "{side} is longer than the distance from {from} to the line, so it reaches the line on both sides of {foot}; it is shorter than {other}, so both places are beyond {corner} ({steps})"
        sample-let-foot: the perpendicular from a point to a line meets it once
        sample-cosine-rule: cosine rule, with {side} opposite {angle}
        sample.plan: find the angle opposite the known side {side}; then the sine rule gives {first} and {second}
        sample.plan-height: the shortest distance is perpendicular to the track, so a right-angled triangle gives it
        sample.plan-count: the given angle is not between the given sides, so count the triangles first
        sample.plan-rule: "{side} and the angle opposite it are known, so use the sine rule"
        sample.caution: visit the place first, keep back from drops, water and traffic, never sight near the sun, and do not work alone
        sample.caution-permission: get permission; local rules decide, and anything legal or safety-critical belongs to a licensed surveyor or another competent professional
        sample.caution-strength: lengths and angles say nothing of strength
        sample.let-foot: let {foot} be the foot of the perpendicular from {from} to {line}
        sample.smallest: this is the smallest angle, so {side} is the shortest side
        sample.unrounded: this uses the unrounded value of {side} from {step}
        sample.upper: upper bounds
        sample.lower: lower bounds
        sample.cell: "{of}"
        sample.find-third: find the third angle
        sample.draw-height: draw the shortest distance
        sample.write-height: write {of} in terms of the measurements only
        sample.heading-bounds: bounds
        sample.heading-distances: the distances {first} and {second}
        sample.calculator: a calculator shows only the acute angle
        sample.triangles: "{n|one=triangle|other=triangles}"
        sample.what-if: what if {side} is shorter or longer?
        """;

    private const string UnitedStates = """
        sample-angle-sum: "triangle sum theorem: the measures of the angles of a triangle add up to 180°"
        sample-sine-rule: "law of sines: each side divided by the sine of the angle opposite it gives the same value. {side} is opposite {angle}; {known} is opposite {across}"
        sample-sine-rule.again: law of sines again. {side} is opposite {angle}
        sample-two-right-triangles: in the right triangles on either side of {height}, each part of {base} is {height} divided by the tangent of the angle at its end
        sample-cosine-ratio: in the right triangle at {foot}, {part} is next to {angle}
        sample-cosine-rule: law of cosines, with {side} opposite {angle}
        sample.plan: find the angle opposite the known side {side}; then the law of sines gives {first} and {second}
        sample.plan-height: the shortest distance is perpendicular to the track, so a right triangle gives it
        sample.plan-count: the given angle is not between the given sides (SSA), so count the triangles first
        sample.plan-rule: "{side} and the angle opposite it are known, so use the law of sines"
        """;

    public static Renderer Renderer(English english, Detail detail = Detail.Standard, House? house = null) => new(new RendererOptions
    {
        English = english,
        Detail = detail,
        House = house ?? House.None,
        Wording = english == English.UnitedKingdom ? [UnitedKingdom] : [UnitedKingdom, UnitedStates],
    });
}
