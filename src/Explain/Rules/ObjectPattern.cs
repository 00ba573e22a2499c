namespace Explain;

/// <summary>Reads the objects that a role may name: a point F, a line PQ, a polygon ABC.</summary>
internal static class ObjectPattern
{
    public static Named? Read(string pattern)
    {
        if (pattern.Length == 0 || !pattern.All(char.IsAsciiLetterUpper) || PointNames.Distinct(pattern) is not { } points) return null;
        return points.Count switch { 1 => points[0], 2 => new Line(points[0], points[1]), _ => new Polygon(points) };
    }
}
