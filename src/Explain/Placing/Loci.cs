namespace Explain;

/// <summary>The loci that points already placed give for one that is not.</summary>
internal sealed class Loci(Known known, Layout layout, bool isNorthUp)
{
    /// <summary>For each condition the places where it may hold, several where it does not tell sides apart.</summary>
    public IEnumerable<Items<Locus>> Of(Point point) => [.. layout.Points.SelectMany(p => From(p.Of, p.At, point)), .. OnLines(point), .. Meeting(point), .. Seeing(point)];

    private IEnumerable<Items<Locus>> From(Point from, Vector at, Point point)
    {
        if (known.Length(from, point) is { } length) yield return [new Ring(at, length)];
        if (isNorthUp && known.Bearing(point, from) is { } bearing) yield return [new Ray(at, Compass(bearing), false)];
        foreach (Point other in layout.Points.Select(p => p.Of).Where(o => o != from))
        {
            if (known.Angle(other, from, point) is not { } angle) continue;
            Vector along = layout.Find(other)!.Value - at;
            yield return [new Ray(at, Turned(along, angle), false), new Ray(at, Turned(along, -angle), false)];
        }
    }

    private IEnumerable<Items<Locus>> OnLines(Point point)
    {
        foreach (Items<Point> line in known.Lines.Where(l => l.Contains(point)))
        {
            Point[] placed = [.. line.Where(p => layout.Find(p) is not null)];
            if (placed.Length > 1) yield return [new Ray(layout.Find(placed[0])!.Value, layout.Find(placed[1])!.Value - layout.Find(placed[0])!.Value, true)];
        }
    }

    /// <summary>The angle at the point itself between a line whose direction is known and a point: a perpendicular from there, for one.</summary>
    private IEnumerable<Items<Locus>> Meeting(Point point) =>
        from line in known.Lines.Where(l => l.Contains(point))
        let placed = line.Where(p => layout.Find(p) is not null).ToArray()
        where placed.Length > 1
        let along = layout.Find(placed[1])!.Value - layout.Find(placed[0])!.Value
        from top in layout.Points.Where(p => !line.Contains(p.Of))
        let angle = known.Angle(top.Of, point, placed[0]) ?? known.Angle(top.Of, point, placed[1])
        where angle is not null
        select (Items<Locus>)[new Ray(top.At, Turned(along, angle.Value), true), new Ray(top.At, Turned(along, -angle.Value), true)];

    /// <summary>The angle at the point itself, where a ray towards it is known: then the ray from the other end of what it sees is known too.</summary>
    private IEnumerable<Items<Locus>> Seeing(Point point) =>
        from p in layout.Points
        from q in layout.Points
        where p.Of != q.Of && known.Angle(p.Of, point, q.Of) is not null && known.Angle(q.Of, p.Of, point) is null
        from other in layout.Points
        where other.Of != p.Of && other.Of != q.Of && known.Angle(other.Of, p.Of, point) is not null
        select Ways(p, q, other, point);

    private Items<Locus> Ways(Placed p, Placed q, Placed other, Point point)
    {
        Enclosure seen = known.Angle(p.Of, point, q.Of)!.Value, beside = known.Angle(other.Of, p.Of, point)!.Value;
        Vector side = q.At - p.At, along = other.At - p.At;
        return [.. new[] { beside, -beside }.SelectMany(turn => new[] { seen, -seen }.Select(s => (Locus)new Ray(q.At, Turned(Turned(along, turn), s), true)))];
    }

    private static Vector Compass(Enclosure bearing) => new(Trigonometry.Sin(bearing), Trigonometry.Cos(bearing));

    private static Vector Turned(Vector along, Enclosure degrees)
    {
        Enclosure cosine = Trigonometry.Cos(degrees), sine = Trigonometry.Sin(degrees);
        return new(along.X * cosine - along.Y * sine, along.X * sine + along.Y * cosine);
    }
}
