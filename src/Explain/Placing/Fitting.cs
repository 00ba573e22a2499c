namespace Explain;

/// <summary>Whether a figure in coordinates is as the problem says.</summary>
internal static class Fitting
{
    public static bool Holds(Layout layout, Problem problem, int bits) =>
        problem.Given.All(g => layout.Measure(g.Of) is not { } found || GivenNumbers.Of(g.Value, bits) is not { } value || found.Overlaps(value))
        && problem.Figure.SelectMany(f => Meaning.Of(f.Says)).OfType<Compare>().All(c => Agree(layout, c, bits))
        && Rays.Places(problem).All(p => Holds(layout, p, bits));

    /// <summary>Whether what is stated to be equal comes out equal.</summary>
    private static bool Agree(Layout layout, Compare says, int bits) => says is not { Between: [Relation.Equal], Terms: [SymbolUse first, var second] }
        || layout.Measure(first.Symbol) is not { } one || (second is SymbolUse use ? layout.Measure(use.Symbol) : GivenNumbers.Of(second, bits)) is not { } other || one.Overlaps(other);

    private static bool Holds(Layout layout, Place place, int bits) => (place.Kind, place.Of) switch
    {
        (PlaceKind.Acute, _) => Turn(layout, place, bits) > 0,
        (PlaceKind.Obtuse, _) => Turn(layout, place, bits) < 0,
        (PlaceKind.RightAngle, _) => Turn(layout, place, bits) is null or 0,
        (PlaceKind.SameSide, [Point a, Point b, Line of]) => Side(layout, of, a) * Side(layout, of, b) is null or > 0,
        (PlaceKind.OppositeSides, [Point a, Point b, Line of]) => Side(layout, of, a) * Side(layout, of, b) is null or < 0,
        (PlaceKind.InLine, _) => InOrder(layout, [.. place.Of.OfType<Point>()]),
        (PlaceKind.Between, [Point on, Line of]) => InOrder(layout, [of.From, on, of.To]),
        (PlaceKind.OnProduced, [Point on, Line of]) => InOrder(layout, [of.From, of.To, on]),
        _ => true,
    };

    private static int? Side(Layout layout, Line of, Point point) =>
        layout.Find(of.From) is { } from && layout.Find(of.To) is { } to && layout.Find(point) is { } at ? Vector.Cross(to - from, at - from).Sign : null;

    private static bool InOrder(Layout layout, Items<Point> line)
    {
        for (int i = 1; i + 1 < line.Count; i++)
            if (layout.Find(line[i - 1]) is { } before && layout.Find(line[i]) is { } at && layout.Find(line[i + 1]) is { } after
                && (Vector.Dot(at - before, after - at).Sign < 0 || Vector.Cross(at - before, after - at).Sign is 1 or -1)) return false;
        return true;
    }

    /// <summary>The sign of 90° less the angle; null where the coordinates cannot tell it from a right angle.</summary>
    private static int? Turn(Layout layout, Place place, int bits) =>
        place.Of is [Corner c] && layout.Measure(new Angle(c.First, c.Vertex, c.Second)) is { } angle ? (Enclosure.Of(90, bits) - angle).Sign : null;
}
