namespace Explain;

/// <summary>Places the points that are left, each where two of its loci meet, in every way.</summary>
internal sealed class PlacingOn(Problem problem, Known known, bool isNorthUp)
{
    private readonly Point[] points = [.. problem.Figure.SelectMany(f => Mentions.Points(f.Says)).Concat(problem.Given.SelectMany(g => Mentions.Points(g.Of))).Distinct()];

    /// <summary>Every way to go on from a beginning; null when points are left that nothing fixes.</summary>
    public Items<Layout>? From(Layout layout)
    {
        Point[] left = [.. points.Where(p => layout.Find(p) is null)];
        foreach (Point point in left)
        {
            if (Places(layout, point) is not { } places) continue;
            Items<Layout>?[] ends = [.. places.Select(at => From(new Layout(layout.Points.With(new(point, at, OnlyDirection: false)))))];
            return ends.Contains(null) ? null : [.. ends.SelectMany(e => e!.Value)];
        }

        return left.All(p => IsOnLine(layout, p)) ? [layout] : null;
    }

    /// <summary>Whether a point may slide along a line already drawn: only its direction is used.</summary>
    private bool IsOnLine(Layout layout, Point point) => known.Lines.Any(l => l.Contains(point) && l.Count(p => layout.Find(p) is not null) > 1);

    private Items<Vector>? Places(Layout layout, Point point)
    {
        foreach (Place place in Rays.Places(problem).Where(p => p.Of is [Point defined, ..] && defined == point))
            if (layout.With(place)?.Find(point) is { } at) return [at];
        Items<Locus>[] loci = [.. new Loci(known, layout, isNorthUp).Of(point)];
        for (int i = 0; i < loci.Length; i++)
            for (int j = i + 1; j < loci.Length; j++)
            {
                Items<Vector>?[] met = [.. loci[i].SelectMany(a => loci[j].Select(b => Crossing.Of(a, b)))];
                if (!met.Contains(null)) return [.. met.SelectMany(m => m!.Value)];
            }

        return null;
    }
}
