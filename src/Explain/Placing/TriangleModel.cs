namespace Explain;

/// <summary>Draws a triangle and the points on its sides from any three measurements that fix it.</summary>
internal sealed class TriangleModel : IIndependentModel
{
    public Items<Layout>? Layouts(Problem problem, int bits)
    {
        if (Rays.Places(problem).Select(TriangleOf).FirstOrDefault(t => t is not null) is not { } triangle) return null;
        Rays rays = new(problem);
        if (new TrianglePlacing(new TriangleParameters(triangle, problem, rays), bits).Corners() is not { } corners) return null;
        PointsOnSides sides = new(problem, rays, bits);
        return [.. corners.Select(c => sides.AddTo(new Layout(c))).Where(l => Fits(l, problem, bits))];
    }

    private static Polygon? TriangleOf(Place place) => place.Kind is PlaceKind.Triangle or PlaceKind.RightAngledTriangle
        ? place.Of.OfType<Polygon>().FirstOrDefault(p => p.Corners.Count == 3) : null;

    private static bool Fits(Layout layout, Problem problem, int bits) =>
        problem.Given.All(g => layout.Measure(g.Of) is not { } found || GivenNumbers.Of(g.Value, bits) is not { } value || found.Overlaps(value))
        && Rays.Places(problem).All(p => p.Kind switch
        {
            PlaceKind.Acute => Turn(layout, p, bits) > 0,
            PlaceKind.Obtuse => Turn(layout, p, bits) < 0,
            PlaceKind.RightAngle => Turn(layout, p, bits) is null or 0,
            _ => true,
        });

    /// <summary>The sign of 90° less the angle; null where the coordinates cannot tell it from a right angle.</summary>
    private static int? Turn(Layout layout, Place place, int bits) =>
        place.Of is [Corner c] && layout.Measure(new Angle(c.First, c.Vertex, c.Second)) is { } angle ? (Enclosure.Of(90, bits) - angle).Sign : null;
}
