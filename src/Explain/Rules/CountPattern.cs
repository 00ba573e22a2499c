namespace Explain;

/// <summary>Reads "2 triangles ABC": how many triangles there are.</summary>
internal static class CountPattern
{
    public static HowMany? Read(string pattern) => pattern.Split(' ') is [[>= '0' and <= '9'] count, "triangle" or "triangles", var corners]
        && ObjectPattern.Read(corners) is Polygon triangle ? Of(triangle, count[0] - '0') : null;

    public static HowMany Of(Polygon triangle, int count) =>
        new(RulePhrases.Triangles(count), [new Place(PlaceKind.Triangle, [triangle])], count);
}
