namespace Explain;

/// <summary>A point and where it is.</summary>
/// <param name="Of">The point.</param>
/// <param name="At">Its place from the origin.</param>
/// <param name="OnlyDirection">True when the point may slide along its ray, so that only angles may be measured with it.</param>
internal sealed record Placed(Point Of, Vector At, bool OnlyDirection);
