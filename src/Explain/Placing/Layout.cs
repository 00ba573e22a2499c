namespace Explain;

/// <summary>One figure in coordinates. Lengths are in metres, angles in degrees, areas in square metres.</summary>
internal sealed record Layout(Items<Placed> Points)
{
    public Vector? Find(Point point) => Points.FirstOrDefault(p => p.Of == point)?.At;

    /// <summary>The quantity as the coordinates give it; null when they do not fix it.</summary>
    public Enclosure? Measure(Symbol symbol) => symbol switch
    {
        Angle => Measuring.Of(symbol, Find),
        Ratio r => Measuring.Of(r, Find),
        _ => Mentions.Points(symbol).All(IsFixed) ? Measuring.Of(symbol, Find) : null,
    };

    /// <summary>The figure with the point that the statement defines by points already placed; null when it defines none.</summary>
    public Layout? With(Place place) => place.Of is not [Point added, ..] || Find(added) is not null ? null : place.Kind switch
    {
        PlaceKind.Foot when place.Of is [_, Point from, Line to] => With(added, Projecting.Foot(from, to, Find)),
        PlaceKind.Midpoint when place.Of is [_, Line of] => With(added, Projecting.Middle(of, Find)),
        _ => null,
    };

    private Layout? With(Point point, Vector? at) => at is { } found ? new(Points.With(new(point, found, OnlyDirection: false))) : null;

    private bool IsFixed(Point point) => Points.FirstOrDefault(p => p.Of == point) is { OnlyDirection: false };
}
