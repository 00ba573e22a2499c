namespace Explain;

/// <summary>The things to find that are no quantity, one row each.</summary>
internal static class GoalTable
{
    /// <summary>Words that other rooms ask for.</summary>
    public const string ScaleFactor = "scale factor", Cuts = "cuts";

    public static Items<GoalRow> Rows { get; } =
    [
        new(new("construction"), _ => new("", null, GoalKind.Construction)),
        new(new("angles of A…C", null, "(the) angles of (the) ([triangle|△|quadrilateral|polygon]) A…C"), of => new("", null, GoalKind.Angles) { Shape = (Polygon)of[0] }),
        new(new("sides of A…C", null, "(the) sides of (the) ([triangle|△|quadrilateral|polygon]) A…C"), of => new("", null, GoalKind.Sides) { Shape = (Polygon)of[0] }),
        new(new("triangle ABC", null, "the triangle ABC", "△ABC", "(all) (the) sides and angles of (the) ([triangle|△]) ABC"), of => new("", null, GoalKind.Triangle) { Shape = (Polygon)of[0] }),
        new(new("the triangle", null, "(all) (the) sides and (the) angles"), _ => new("", null, GoalKind.Triangle)),
        new(new("number of triangles", null, "the number of triangles"), _ => new("", null, GoalKind.Count)),
        new(new("similarity of ABC and DEF", null, "(the) similarity of (triangles) ABC and DEF", "(the) similarity of △ABC and △DEF", "(the) similarity of triangle ABC and triangle DEF"), of => new("", null, GoalKind.Proof) { Statement = new Alike(false, (Polygon)of[0], (Polygon)of[1]) }),
        Of(ScaleFactor), Of(Cuts), Of("proof of equal areas", "(the) proof that the areas are equal"), Of("area of a share", "(the) area of [one|each] share"), Of("why equal angles are not fair"),
        Of("region"), Of("area of region", "(the) area of the region"), Of("boundary of region", "(the) boundary of the region", "(the) length of the boundary of (the) region"),
    ];

    /// <summary>A thing that only a topic knows.</summary>
    private static GoalRow Of(string words, params ReadOnlySpan<string> also) =>
        new(new(words, null, ["the " + words, .. also]), _ => new("", null, GoalKind.Topical) { Words = words });
}
