namespace Explain;

/// <summary>A circle.</summary>
/// <param name="Centre">Its centre.</param>
/// <param name="Through">A point on it; null where the circle is known otherwise.</param>
public sealed record Circle(Point Centre, Point? Through) : Named;
