namespace Explain;

/// <summary>The size of an angle, less than 180° unless reflex. Angle ABC and angle CBA are equal; the order is kept for printing.</summary>
/// <param name="First">A point on one arm.</param>
/// <param name="Vertex">The corner.</param>
/// <param name="Second">A point on the other arm.</param>
/// <param name="Reflex">Whether the angle greater than 180° is meant.</param>
public sealed record Angle(Point First, Point Vertex, Point Second, bool Reflex = false) : Symbol
{
    /// <inheritdoc/>
    public bool Equals(Angle? other) => other is not null && Vertex == other.Vertex && Reflex == other.Reflex
        && ((First == other.First && Second == other.Second) || (First == other.Second && Second == other.First));

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Vertex, First.GetHashCode() ^ Second.GetHashCode(), Reflex);
}
