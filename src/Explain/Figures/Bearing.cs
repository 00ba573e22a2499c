namespace Explain;

/// <summary>The bearing of one point from another: clockwise from north, 0° or more and less than 360°.</summary>
/// <param name="Of">The point looked at.</param>
/// <param name="From">The point looked from.</param>
public sealed record Bearing(Point Of, Point From) : Symbol;
