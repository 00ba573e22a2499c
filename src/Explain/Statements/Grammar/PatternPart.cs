namespace Explain;

/// <summary>A word or a sign of a pattern, or a slot.</summary>
/// <param name="Literal">The word or sign; null for a slot.</param>
/// <param name="Before">What is printed before a slot, since the slot before it.</param>
/// <param name="Example">The letters of the example, which name the slot.</param>
/// <param name="Kind">What fills the slot.</param>
/// <param name="Corners">How many corners a polygon must have; 0 for any number.</param>
/// <param name="Least">For a list, how many items it must have; 0 where there is no list.</param>
internal sealed record PatternPart(string? Literal, string Before, string Example, SlotKind Kind, int Corners, int Least)
{
    public static PatternPart Word(string literal) => new(literal, "", "", default, 0, 0);

    public bool IsList => Least > 0;

    /// <summary>Whether an object may fill the slot.</summary>
    public bool Takes(Named of) => (Kind, of) switch
    {
        (SlotKind.Point, Point) or (SlotKind.Line, Line) or (SlotKind.Corner, Corner) or (SlotKind.Circle, Circle) => true,
        (SlotKind.Polygon, Polygon p) => Corners == 0 ? p.Corners.Count >= 3 : p.Corners.Count == Corners,
        _ => false,
    };

    /// <summary>The object that points typed together make in this slot; null when they make none.</summary>
    public Named? Make(Items<Point> points)
    {
        Named? made = (Kind, points.Count) switch
        {
            (SlotKind.Point, 1) => points[0],
            (SlotKind.Circle, 1) => new Circle(points[0], null),
            (SlotKind.Line, 2) => new Line(points[0], points[1]),
            (SlotKind.Corner, 3) => new Corner(points[0], points[1], points[2]),
            (SlotKind.Polygon, >= 3) => new Polygon(points),
            _ => null,
        };
        return made is not null && Takes(made) ? made : null;
    }
}
