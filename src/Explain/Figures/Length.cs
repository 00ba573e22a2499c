namespace Explain;

/// <summary>The distance between two points. AB and BA are equal; the order is kept for printing.</summary>
/// <param name="From">One end.</param>
/// <param name="To">The other end.</param>
public sealed record Length(Point From, Point To) : Symbol
{
    /// <inheritdoc/>
    public bool Equals(Length? other) =>
        other is not null && ((From == other.From && To == other.To) || (From == other.To && To == other.From));

    /// <inheritdoc/>
    public override int GetHashCode() => From.GetHashCode() ^ To.GetHashCode();
}
