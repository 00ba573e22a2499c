namespace Explain;

/// <summary>
/// The statements of a figure, one row each: what the United Kingdom prints, what the United States print where it differs, and
/// what is read besides. Where two rows have one kind, the first that can say the objects prints them.
/// </summary>
internal static class StatementTable
{
    private static readonly Items<string> PolygonNames =
        ["triangle", "quadrilateral", "pentagon", "hexagon", "heptagon", "octagon", "nonagon", "decagon", "hendecagon", "dodecagon"];

    public static Items<StatementRow> Rows { get; } =
    [
        .. Shapes(), .. Regular(), .. Lines(), .. Circles(), .. Angles(), .. Alikes(), .. Tethers(),
    ];

    private static Items<StatementRow> Shapes() =>
    [
        Of(PlaceKind.Triangle, "ABC is a triangle"),
        Of(PlaceKind.RightAngledTriangle, "ABC is a triangle, right-angled at B", "ABC is a right triangle with its right angle at B",
            "([triangle|△]) ABC is right-angled at B", "([triangle|△]) ABC is right angled at B", "ABC is a triangle(,) right angled at B", "ABC is a triangle right-angled at B",
            "ABC is a right-angled triangle(,) right-angled at B", "ABC is a right-angled triangle(,) with [the|its|a] right angle at B", "ABC is a right triangle(,) with [the|a] right angle at B", "ABC is a right triangle(,) right-angled at B"),
        Of(PlaceKind.IsoscelesTriangle, "ABC is a triangle, isosceles with BA = BC", "ABC is an isosceles triangle with BA = BC",
            "([triangle|△]) ABC is isosceles(,) with BA = BC", "ABC is an isosceles triangle, with BA = BC", "ABC is a triangle(,) isosceles, with BA = BC"),
        Of(PlaceKind.EquilateralTriangle, "ABC is an equilateral triangle", null, "ABC is a triangle(,) equilateral", "([triangle|△]) ABC is equilateral"),
        Of(PlaceKind.Square, "ABCD is a square"),
        Of(PlaceKind.Rectangle, "ABCD is a rectangle"),
        Of(PlaceKind.Rhombus, "ABCD is a rhombus"),
        Of(PlaceKind.Parallelogram, "ABCD is a parallelogram"),
        Of(PlaceKind.Kite, "ABCD is a kite"),
        Of(PlaceKind.Trapezium, "ABCD is a trapezium", "ABCD is a trapezoid"),
        Of(PlaceKind.Quadrilateral, "ABCD is a quadrilateral", null, "ABCD is a convex quadrilateral"),
        Of(PlaceKind.ConvexPolygon, "A…E is a polygon", null, "A…E is a convex polygon"),
        Of(PlaceKind.ReflexPolygon, "A…F is a polygon, reflex at D, …", null, "A…F is a polygon reflex at D, …", "A…F is a polygon(,) with (a) reflex [angle|angles] at D, …"),
    ];

    private static IEnumerable<StatementRow> Regular()
    {
        for (int n = 3; n <= TextLimits.Points; n++)
        {
            string corners = string.Concat(Enumerable.Range(0, n).Select(i => (char)('A' + i)));
            string byNumber = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{corners} is a regular {n}-gon");
            yield return n - 3 < PolygonNames.Count
                ? Of(PlaceKind.RegularPolygon, $"{corners} is a regular {PolygonNames[n - 3]}", null, byNumber)
                : Of(PlaceKind.RegularPolygon, byNumber);
        }
    }

    private static Items<StatementRow> Lines() =>
    [
        Of(PlaceKind.InLine, "A, B, C, … are in line", "A, B, C, … are collinear", "A, B, C, … [are|lie] on [a|one] (straight) line", "A, B, C, … [are|lie] in a (straight) line", "A, B, C, … lie in line"),
        Of(PlaceKind.Between, "D is on AB", null, "D [is|lies] on (the) ([side|segment]) AB", "D lies on AB"),
        Of(PlaceKind.OnProduced, "D is on AB produced", "D is on AB extended", "D lies on AB [produced|extended]"),
        Of(PlaceKind.OnLine, "D is on the line AB", null, "D [is|lies] on the straight line AB", "D lies on the line AB"),
        Of(PlaceKind.Inside, "D is inside A…C", null, "D [is|lies] inside (the) ([triangle|△|polygon|quadrilateral]) A…C"),
        Of(PlaceKind.Meet, "AB and CD meet at E", null, "AB and CD [cross|intersect] at E", "(the) segments AB and CD [meet|cross|intersect] at E"),
        Of(PlaceKind.LinesMeet, "the lines AB and CD meet at E", null, "(the) (straight) lines AB and CD [meet|cross|intersect] at E"),
        Of(PlaceKind.Parallel, "PQ is parallel to RS", "PQ ∥ RS", "PQ parallel to RS", "(the) line PQ is parallel to (the) (line) RS", "(the) (lines) PQ and RS are parallel"),
        Of(PlaceKind.Perpendicular, "AB is perpendicular to BD", "AB ⊥ BD", "AB perpendicular to BD", "AB is at right angles to BD", "(the) line AB is perpendicular to (the) (line) BD", "(the) (lines) AB and BD are perpendicular"),
        Of(PlaceKind.Midpoint, "M is the midpoint of AB", null, "M is (the) [midpoint|mid-point] of (the) ([side|segment]) AB"),
        Of(PlaceKind.Bisects, "AD bisects angle BAC", "AD bisects ∠BAC", "AD is the bisector of angle BAC"),
        Of(PlaceKind.Foot, "F is the foot of the perpendicular from T to PQ", null, "F is (the) foot of (the) perpendicular from T [to|on|onto] (the) (line) PQ"),
        Of(PlaceKind.OppositeSides, "A and E are on opposite sides of BD", null, "A and E [are|lie] on [opposite|different] sides of (the) (line) BD"),
        Of(PlaceKind.SameSide, "A and E are on the same side of BD", null, "A and E [are|lie] on (the) same side of (the) (line) BD"),
    ];

    private static Items<StatementRow> Circles() =>
    [
        Of(PlaceKind.OnCircle, "A is on a circle, centre O", "A is on a circle, center O", "A [is|lies] on [a|the] circle(,) (with) [centre|center] O"),
        Of(PlaceKind.OnCircle, "A, … are on a circle, centre O", "A, … are on a circle, center O", "A, … [are|lie] on [a|the] circle(,) (with) [centre|center] O"),
        Of(PlaceKind.Diameter, "AB is a diameter", null, "AB is [a|the] diameter (of the circle)"),
        Of(PlaceKind.Touches, "TA touches the circle at A", null, "TA is (a) tangent to the circle at A"),
        Of(PlaceKind.CircleTouches, "the circle touches AB, …"),
    ];

    private static Items<StatementRow> Angles() =>
    [
        Of(PlaceKind.Acute, "angle ABC is acute", "∠ABC is acute"),
        Of(PlaceKind.Obtuse, "angle ABC is obtuse", "∠ABC is obtuse"),
        Of(PlaceKind.ReflexAngle, "angle ABC is reflex", "∠ABC is reflex"),
        Of(PlaceKind.RightAngle, "angle ABC is a right angle", "∠ABC is a right angle"),
        Of(PlaceKind.Clockwise, "A…C goes clockwise"),
        Of(PlaceKind.Anticlockwise, "A…C goes anticlockwise", "A…C goes counterclockwise"),
    ];

    private static Items<StatementRow> Alikes() =>
    [
        Of(congruent: false, "triangle ABC is similar to triangle DEF", "△ABC ∼ △DEF", "(the) triangles ABC and DEF are similar", "△ABC is similar to △DEF", "△ABC and △DEF are similar", "triangle ABC ∼ triangle DEF"),
        Of(congruent: false, "A…D is similar to E…H", "A…D ∼ E…H", "([polygons|quadrilaterals]) A…D and E…H are similar"),
        Of(congruent: true, "triangles ABC and DEF are congruent", "△ABC ≅ △DEF", "the triangles ABC and DEF are congruent", "triangle ABC is congruent to triangle DEF", "△ABC is congruent to △DEF", "△ABC and △DEF are congruent", "triangle ABC ≅ triangle DEF"),
        Of(congruent: true, "A…D and E…H are congruent", "A…D ≅ E…H", "[polygons|quadrilaterals] A…D and E…H are congruent", "A…D is congruent to E…H"),
    ];

    private static Items<StatementRow> Tethers() =>
    [
        Of(PlaceKind.TetherOutside, "tether at A, outside B…D", null, "(a) tether at A(,) outside B…D"),
        Of(PlaceKind.TetherInside, "tether at A, inside B…D", null, "(a) tether at A(,) inside B…D"),
        Of(PlaceKind.TetherRound, "tether at A, outside the circle", null, "(a) tether at A(,) outside the circle"),
        Of(PlaceKind.TetherFree, "tether at O", null, "a tether at O"),
    ];

    private static StatementRow Of(PlaceKind kind, string unitedKingdom, string? unitedStates = null, params ReadOnlySpan<string> also) =>
        new(kind, false, new(unitedKingdom, unitedStates, also));

    private static StatementRow Of(bool congruent, string unitedKingdom, string? unitedStates = null, params ReadOnlySpan<string> also) =>
        new(null, congruent, new(unitedKingdom, unitedStates, also));
}
