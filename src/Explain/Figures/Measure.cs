namespace Explain;

/// <summary>
/// A measure of a shape: the area of ABC, the perimeter of ABCD. The area of ABC and that of BCA or CBA are equal; the order is kept for printing.
/// </summary>
/// <param name="Kind">What is measured.</param>
/// <param name="Of">The shape.</param>
public sealed record Measure(MeasureKind Kind, Polygon Of) : Symbol
{
    /// <inheritdoc/>
    public bool Equals(Measure? other) => other is not null && Kind == other.Kind && IsRound(Of.Corners, other.Of.Corners);

    /// <inheritdoc/>
    public override int GetHashCode() => Of.Corners.Aggregate((int)Kind, (all, corner) => all ^ corner.GetHashCode());

    /// <summary>Whether two lists name the same corners round one shape, from any of them and either way.</summary>
    private static bool IsRound(Items<Point> first, Items<Point> second) => first.Count == second.Count
        && Enumerable.Range(0, first.Count).Any(start => Along(first, second, start, 1) || Along(first, second, start, first.Count - 1));

    private static bool Along(Items<Point> first, Items<Point> second, int start, int step) =>
        Enumerable.Range(0, first.Count).All(i => first[i] == second[(start + i * step) % first.Count]);
}
