namespace Explain;

/// <summary>The straight line through two points, or the part between them, as the statement says. PQ and QP are equal.</summary>
/// <param name="From">The first point named.</param>
/// <param name="To">The second point named.</param>
public sealed record Line(Point From, Point To) : Named
{
    /// <inheritdoc/>
    public bool Equals(Line? other) =>
        other is not null && ((From == other.From && To == other.To) || (From == other.To && To == other.From));

    /// <inheritdoc/>
    public override int GetHashCode() => From.GetHashCode() ^ To.GetHashCode();
}
