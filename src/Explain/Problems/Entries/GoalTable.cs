namespace Explain;

/// <summary>The things to find that are no quantity, one row each.</summary>
internal static class GoalTable
{
    public static Items<GoalRow> Rows { get; } =
    [
        new(new("construction"), _ => new("", null, GoalKind.Construction)),
        new(new("angles of A…C", null, "(the) angles of (the) (triangle) A…C"), of => new("", null, GoalKind.Angles) { Shape = (Polygon)of[0] }),
        new(new("sides of A…C", null, "(the) sides of (the) (triangle) A…C"), of => new("", null, GoalKind.Sides) { Shape = (Polygon)of[0] }),
        new(new("number of triangles", null, "the number of triangles"), _ => new("", null, GoalKind.Count)),
        new(new("similarity of ABC and DEF", null, "(the) similarity of (triangles) ABC and DEF"), of => new("", null, GoalKind.Proof) { Statement = new Alike(false, (Polygon)of[0], (Polygon)of[1]) }),
        .. ((string[])["scale factor", "cuts", "proof of equal areas", "area of a share", "why equal angles are not fair", "region", "area of region", "boundary of region"])
            .Select(words => new GoalRow(new(words, null, "the " + words), _ => new("", null, GoalKind.Topical))),
    ];
}
