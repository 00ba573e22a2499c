namespace Explain;

/// <summary>How the problem spells its quantities; what it does not name is spelled round the triangle.</summary>
internal static class Spellings
{
    public static Items<Symbol> Of(Problem problem) =>
    [
        .. problem.Given.Select(g => g.Of), .. problem.Find.Select(g => g.Wanted).OfType<Symbol>(),
        .. Rays.Triangles(problem).SelectMany(Measures), .. Rays.Triangles(problem).SelectMany(TriangleParts.Sides).Select(Ordered), .. Rays.Triangles(problem).SelectMany(TriangleParts.Angles).Select(Ordered),
    ];

    private static IEnumerable<Symbol> Measures(Polygon shape) => Enum.GetValues<MeasureKind>().Select(kind => new Measure(kind, shape));

    /// <summary>The sides and angles of a triangle, letters in order.</summary>
    public static Items<Symbol> Of(Polygon triangle) => [.. TriangleParts.Sides(triangle).Select(Ordered), .. TriangleParts.Angles(triangle).Select(Ordered)];

    private static Length Ordered(Length side) => InOrder(side.From, side.To) ? side : new(side.To, side.From);

    private static Angle Ordered(Angle angle) => InOrder(angle.First, angle.Second) ? angle : angle with { First = angle.Second, Second = angle.First };

    private static bool InOrder(Point first, Point second) => string.CompareOrdinal(first.Name, second.Name) < 0;
}
