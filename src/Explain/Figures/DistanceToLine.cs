namespace Explain;

/// <summary>The shortest distance from a point to a straight line.</summary>
/// <param name="From">The point.</param>
/// <param name="To">The line.</param>
public sealed record DistanceToLine(Point From, Line To) : Symbol;
