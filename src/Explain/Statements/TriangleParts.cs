namespace Explain;

/// <summary>The sides and angles of a polygon named in a fact.</summary>
internal static class TriangleParts
{
    public static IEnumerable<Angle> Angles(Place triangle) => Angles((Polygon)triangle.Of[0]);

    public static IEnumerable<Angle> Angles(Polygon polygon)
    {
        Items<Point> c = polygon.Corners;
        for (int i = 0; i < c.Count; i++) yield return new Angle(c[(i + c.Count - 1) % c.Count], c[i], c[(i + 1) % c.Count]);
    }

    public static IEnumerable<Length> Sides(Polygon polygon)
    {
        Items<Point> c = polygon.Corners;
        for (int i = 0; i < c.Count; i++) yield return new Length(c[i], c[(i + 1) % c.Count]);
    }
}
