namespace Explain;

/// <summary>The angle at a corner as an object that a statement can name: angle ABC is acute. Equal either way round.</summary>
/// <param name="First">A point on one arm.</param>
/// <param name="Vertex">The corner.</param>
/// <param name="Second">A point on the other arm.</param>
public sealed record Corner(Point First, Point Vertex, Point Second) : Named
{
    /// <inheritdoc/>
    public bool Equals(Corner? other) => other is not null && Vertex == other.Vertex
        && ((First == other.First && Second == other.Second) || (First == other.Second && Second == other.First));

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Vertex, First.GetHashCode() ^ Second.GetHashCode());
}
