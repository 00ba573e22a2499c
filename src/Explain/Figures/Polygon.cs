namespace Explain;

/// <summary>A polygon, its corners in order round the shape. Equal when the same corners are named in the same order.</summary>
/// <param name="Corners">Three corners or more.</param>
public sealed record Polygon(Items<Point> Corners) : Named;
