namespace Explain;

/// <summary>The quantities of a figure, one row each.</summary>
internal static class QuantityTable
{
    public static Items<QuantityRow> Rows { get; } =
    [
        new(new("AB", null, "(the) [length|side|segment] AB", "(the) length of ([side|segment]) AB"), of => Between((Line)of[0]), s => s is Length l ? [new Line(l.From, l.To)] : null),
        new(new("angle ABC", "m∠ABC"), of => At((Corner)of[0], reflex: false), s => s is Angle { Reflex: false } a ? [Corner(a)] : null),
        new(new("reflex angle ABC", "reflex m∠ABC", "the reflex angle ABC", "reflex ∠ABC"), of => At((Corner)of[0], reflex: true), s => s is Angle { Reflex: true } a ? [Corner(a)] : null),
        new(new("the distance from T to PQ", null, "(the) (shortest) distance [from|of] T [to|from] (the) (line) PQ",
                "(the) [height|altitude|perpendicular] from T [to|on|onto] (the) (line) PQ", "(the) height of T above (the) (line) PQ"),
            of => new DistanceToLine((Point)of[0], (Line)of[1]), s => s is DistanceToLine d ? [d.From, d.To] : null),
        new(new("the bearing of B from A", null, "bearing of B from A"), of => new Bearing((Point)of[0], (Point)of[1]), s => s is Bearing b ? [b.Of, b.From] : null),
        Of(MeasureKind.Area, "the area of A…C", "(the) area of (the) ([triangle|△|quadrilateral|polygon]) A…C"),
        Of(MeasureKind.Perimeter, "the perimeter of A…C", "(the) perimeter of (the) ([triangle|△|quadrilateral|polygon]) A…C"),
        Of(MeasureKind.HalfPerimeter, "half the perimeter of A…C", "half (of) the perimeter of (the) ([triangle|△]) A…C"),
        Of(MeasureKind.InscribedRadius, "the radius of the inscribed circle of A…C", "(the) radius of (the) [inscribed circle|incircle] of ([triangle|△]) A…C", "(the) inradius of ([triangle|△]) A…C"),
        Of(MeasureKind.CircumscribedRadius, "the radius of the circle through A…C", "(the) radius of (the) circle through A…C",
            "(the) radius of (the) [circumscribed circle|circumcircle] of ([triangle|△]) A…C", "(the) circumradius of ([triangle|△]) A…C"),
        Of(MeasureKind.CircumscribedDiameter, "the diameter of the circle through A…C", "(the) diameter of (the) circle through A…C",
            "(the) diameter of (the) [circumscribed circle|circumcircle] of ([triangle|△]) A…C"),
        Of(CircleMeasureKind.Radius, "the radius of the circle", "radius of the circle", "(the) radius"),
        Of(CircleMeasureKind.Circumference, "the circumference of the circle", "circumference of the circle", "(the) circumference"),
    ];

    private static Length Between(Line line) => new(line.From, line.To);

    private static Angle At(Corner corner, bool reflex) => new(corner.First, corner.Vertex, corner.Second, reflex);

    private static Corner Corner(Angle angle) => new(angle.First, angle.Vertex, angle.Second);

    private static QuantityRow Of(MeasureKind kind, string text, params ReadOnlySpan<string> also) =>
        new(new(text, null, also), of => new Measure(kind, (Polygon)of[0]), s => s is Measure m && m.Kind == kind ? [m.Of] : null);

    private static QuantityRow Of(CircleMeasureKind kind, string text, params ReadOnlySpan<string> also) =>
        new(new(text, null, also), _ => new CircleMeasure(kind), s => s is CircleMeasure c && c.Kind == kind ? default(Items<Named>) : null);
}
