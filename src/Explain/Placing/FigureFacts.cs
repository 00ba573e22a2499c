namespace Explain;

/// <summary>What a drawn figure shows beyond what its statements say word for word: its triangles, right angles, sides and turns.</summary>
internal static class FigureFacts
{
    /// <summary>The facts, the same in every figure that fits the problem.</summary>
    public static IEnumerable<Place> Of(Problem problem, Items<Layout> layouts)
    {
        if (layouts.Count == 0) return [];
        Point[] points = [.. layouts[0].Points.Where(p => !p.OnlyDirection).Select(p => p.Of)];
        bool isNorthUp = problem.Given.Any(g => g.Of is Bearing);
        IEnumerable<Point[]> triples = from a in points from b in points from c in points
            where string.CompareOrdinal(a.Name, b.Name) < 0 && string.CompareOrdinal(b.Name, c.Name) < 0 select (Point[])[a, b, c];
        return
        [
            .. Rays.Places(problem).SelectMany(Betweens), .. Rays.Places(problem).Select(p => OnItsLine(p, layouts)).OfType<Place>(),
            .. triples.Where(t => layouts.All(l => Turn(l, t) is 1 or -1)).Select(t => new Place(PlaceKind.Triangle, [new Polygon([.. t])])),
            .. StatedRightAngles.Of(problem).Select(c => new Place(PlaceKind.RightAngle, [c])),
            .. isNorthUp ? triples.SelectMany(t => Turns(layouts, t)) : [],
        ];
    }

    private static IEnumerable<Place> Betweens(Place place)
    {
        if (place.Kind != PlaceKind.InLine) yield break;
        Point[] line = [.. place.Of.OfType<Point>()];
        for (int i = 0; i < line.Length; i++)
            for (int k = i + 2; k < line.Length; k++)
                for (int j = i + 1; j < k; j++) yield return new(PlaceKind.Between, [line[j], new Line(line[i], line[k])]);
    }

    /// <summary>Where on its line a foot lies.</summary>
    private static Place? OnItsLine(Place place, Items<Layout> layouts)
    {
        if (place is not { Kind: PlaceKind.Foot, Of: [Point foot, Point, Line line] }) return null;
        (int?, int?)[] sides = [.. layouts.Select(l => (Ahead(l, line.From, line.To, foot), Ahead(l, line.To, line.From, foot))).Distinct()];
        return sides switch
        {
            [(1, 1)] => new(PlaceKind.Between, [foot, line]),
            [(1, -1)] => new(PlaceKind.OnProduced, [foot, line]),
            [(-1, 1)] => new(PlaceKind.OnProduced, [foot, new Line(line.To, line.From)]),
            _ => null,
        };
    }

    /// <summary>1 where a point is on the side of one end towards the other, −1 where it is behind it.</summary>
    private static int? Ahead(Layout layout, Point end, Point towards, Point point) => layout.Find(end) is { } start && layout.Find(towards) is { } far && layout.Find(point) is { } at
        ? Vector.Dot(far - start, at - start).Sign : null;

    private static IEnumerable<Place> Turns(Items<Layout> layouts, Point[] t)
    {
        int?[] turns = [.. layouts.Select(l => Turn(l, t)).Distinct()];
        if (turns is not [1 or -1]) return [];
        PlaceKind kind = turns[0] < 0 ? PlaceKind.Clockwise : PlaceKind.Anticlockwise, other = turns[0] < 0 ? PlaceKind.Anticlockwise : PlaceKind.Clockwise;
        return [.. Cycles(t).Select(c => new Place(kind, [new Polygon(c)])), .. Cycles([t[0], t[2], t[1]]).Select(c => new Place(other, [new Polygon(c)]))];
    }

    private static IEnumerable<Items<Point>> Cycles(Point[] t) => [[t[0], t[1], t[2]], [t[1], t[2], t[0]], [t[2], t[0], t[1]]];

    /// <summary>1 anticlockwise, −1 clockwise; null where the enclosures do not tell.</summary>
    private static int? Turn(Layout layout, Point[] t) =>
        Vector.Cross(layout.Find(t[1])!.Value - layout.Find(t[0])!.Value, layout.Find(t[2])!.Value - layout.Find(t[0])!.Value).Sign;
}
