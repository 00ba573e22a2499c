namespace Explain;

/// <summary>A place where an extreme may be, and the enclosure of the formula there.</summary>
internal sealed record Spot(Items<Located> Place, Enclosure Value)
{
    public bool IsExact => Place.All(l => l.At.Exact is not null);

    public bool IsAt(Spot other) => IsExact && other.IsExact && Place.Select(l => l.At.Exact).SequenceEqual(other.Place.Select(l => l.At.Exact));
}
