namespace Explain;

/// <summary>The names of quantities that are words.</summary>
internal static partial class SymbolWords
{
    [Phrase("quantity.distance")]
    public static partial Phrase Distance(Point from, Line to);

    [Phrase("quantity.bearing")]
    public static partial Phrase Bearing(Point of, Point from);

    [Phrase("quantity.area")]
    public static partial Phrase Area(Polygon of);

    [Phrase("quantity.perimeter")]
    public static partial Phrase Perimeter(Polygon of);

    [Phrase("quantity.inscribed-radius")]
    public static partial Phrase InscribedRadius(Polygon of);

    [Phrase("quantity.circumscribed-radius")]
    public static partial Phrase CircumscribedRadius(Polygon of);
}
