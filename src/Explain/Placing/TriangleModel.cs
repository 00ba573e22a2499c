namespace Explain;

/// <summary>Draws a triangle and the points on its sides from any three measurements that fix it.</summary>
internal sealed class TriangleModel : IIndependentModel
{
    public Items<Layout>? Layouts(Problem problem, int bits)
    {
        if (Rays.Triangles(problem).FirstOrDefault(t => t.Corners.Count == 3) is not { } triangle) return null;
        Rays rays = new(problem);
        if (new Completing(bits).Corners(new TriangleParameters(triangle, problem, rays)) is not { } corners) return null;
        PointsOnSides sides = new(problem, rays, bits);
        return [.. corners.Select(c => sides.AddTo(new Layout(c))).Where(l => Fits(l, problem, bits))];
    }

    private static bool Fits(Layout layout, Problem problem, int bits) =>
        problem.Given.All(g => layout.Measure(g.Of) is not { } found || GivenNumbers.Of(g.Value, bits) is not { } value || found.Overlaps(value))
        && problem.Figure.SelectMany(f => Meaning.Of(f.Says)).OfType<Compare>().All(c => Agree(layout, c, bits))
        && Rays.Places(problem).All(p => p.Kind switch
        {
            PlaceKind.Acute => Turn(layout, p, bits) > 0,
            PlaceKind.Obtuse => Turn(layout, p, bits) < 0,
            PlaceKind.RightAngle => Turn(layout, p, bits) is null or 0,
            _ => true,
        });

    /// <summary>Whether what is stated to be equal comes out equal.</summary>
    private static bool Agree(Layout layout, Compare says, int bits) => says is not { Between: [Relation.Equal], Terms: [SymbolUse first, var second] }
        || layout.Measure(first.Symbol) is not { } one || (second is SymbolUse use ? layout.Measure(use.Symbol) : GivenNumbers.Of(second, bits)) is not { } other || one.Overlaps(other);

    /// <summary>The sign of 90° less the angle; null where the coordinates cannot tell it from a right angle.</summary>
    private static int? Turn(Layout layout, Place place, int bits) =>
        place.Of is [Corner c] && layout.Measure(new Angle(c.First, c.Vertex, c.Second)) is { } angle ? (Enclosure.Of(90, bits) - angle).Sign : null;
}
