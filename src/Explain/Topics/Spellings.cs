namespace Explain;

/// <summary>How the problem spells its quantities; what it does not name is spelled round the triangle.</summary>
internal static class Spellings
{
    public static Items<Symbol> Of(Problem problem) =>
    [
        .. problem.Given.Select(g => g.Of), .. problem.Find.Select(g => g.Wanted).OfType<Symbol>(),
        .. Shapes(problem).SelectMany(Measures), .. Shapes(problem).SelectMany(TriangleParts.Sides).Select(Ordered), .. Shapes(problem).SelectMany(TriangleParts.Angles).Select(Ordered),
    ];

    private static IEnumerable<Symbol> Measures(Polygon shape) => Enum.GetValues<MeasureKind>().Select(kind => new Measure(kind, shape));

    private static Length Ordered(Length side) => InOrder(side.From, side.To) ? side : new(side.To, side.From);

    private static Angle Ordered(Angle angle) => InOrder(angle.First, angle.Second) ? angle : angle with { First = angle.Second, Second = angle.First };

    private static bool InOrder(Point first, Point second) => string.CompareOrdinal(first.Name, second.Name) < 0;

    private static IEnumerable<Polygon> Shapes(Problem problem) =>
        problem.Figure.SelectMany(f => Meaning.Of(f.Says)).OfType<Place>().Where(p => p.Kind == PlaceKind.Triangle).Select(p => (Polygon)p.Of[0]);
}
