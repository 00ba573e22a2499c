namespace Explain;

/// <summary>Finds every way in which the facts of a figure meet the structural conditions of a rule.</summary>
internal static class Instances
{
    public static IEnumerable<Instance> Of(Schema schema, IReadOnlyCollection<Place> facts, Arrangement arrangement) =>
        Extend([], [.. schema.When.OfType<Place>()], 0, facts).Select(map => Instance.Of(schema, new Renaming(map), arrangement));

    /// <summary>Whether two facts say the same under other names of their objects.</summary>
    public static bool Same(Place first, Place second) =>
        first.Kind == second.Kind && Orders(first).Any(objects => objects == second.Of);

    private static IEnumerable<Dictionary<Point, Point>> Extend(
        Dictionary<Point, Point> map, Place[] patterns, int next, IReadOnlyCollection<Place> facts)
    {
        if (next == patterns.Length) return [map];
        return facts.Where(f => f.Kind == patterns[next].Kind).SelectMany(Orders)
            .Select(objects => Unify(map, patterns[next].Of, objects)).OfType<Dictionary<Point, Point>>()
            .SelectMany(extended => Extend(extended, patterns, next + 1, facts));
    }

    private static Dictionary<Point, Point>? Unify(Dictionary<Point, Point> map, Items<Named> pattern, Items<Named> objects)
    {
        Point[] from = [.. pattern.SelectMany(PointsOf)], to = [.. objects.SelectMany(PointsOf)];
        if (from.Length != to.Length) return null;
        Dictionary<Point, Point> extended = new(map);
        for (int i = 0; i < from.Length; i++)
        {
            if (!extended.TryGetValue(from[i], out Point? old)) extended.Add(from[i], to[i]);
            else if (old != to[i]) return null;
        }

        return extended.Values.Distinct().Count() == extended.Count ? extended : null;
    }

    /// <summary>The ways of naming the objects of one fact that say the same.</summary>
    private static IEnumerable<Items<Named>> Orders(Place fact) => fact.Of.Count == 0 ? [[]] : fact.Kind switch
    {
        PlaceKind.Triangle or PlaceKind.EquilateralTriangle => Permutations([.. ((Polygon)fact.Of[0]).Corners]).Select(c => (Items<Named>)[new Polygon([.. c])]),
        PlaceKind.OnProduced or PlaceKind.Parallel or PlaceKind.InLine or PlaceKind.OnCircle => [fact.Of],
        _ => fact.Of.Aggregate<Named, IEnumerable<Items<Named>>>([[]], (soFar, named) => soFar.SelectMany(s => Ways(named).Select(s.With))),
    };

    private static IEnumerable<Named> Ways(Named named) => named switch
    {
        Line l => [l, new Line(l.To, l.From)],
        Corner c => [c, new Corner(c.Second, c.Vertex, c.First)],
        _ => [named],
    };

    private static IEnumerable<Point[]> Permutations(Point[] points) => points.Length <= 1 ? [points]
        : points.SelectMany(p => Permutations([.. points.Where(q => q != p)]).Select(rest => (Point[])[p, .. rest]));

    private static IEnumerable<Point> PointsOf(Named named) => named switch
    {
        Point p => [p],
        Line l => [l.From, l.To],
        Polygon p => p.Corners,
        Corner c => [c.First, c.Vertex, c.Second],
        _ => throw new ArgumentException(named.GetType().Name, nameof(named)),
    };
}
