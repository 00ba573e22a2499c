namespace Explain;

/// <summary>The unknown sides and angles of a triangle, in all its cases.</summary>
internal static class SolveATriangle
{
    public static Topic Topic { get; } = new(new("solve a triangle"), Starters.Triangle)
    {
        Words = new(TopicPhrases.TriangleFigure(), TopicPhrases.TriangleGiven(), TopicPhrases.TriangleFind()),
        Accepts = Accepting.OneTriangle,
        Working =
        [
            .. SpecialTriangles.Working,
            new(TriangleRules.Book.AngleSumOfATriangle, 1), new(TriangleRules.Book.SineRule, 1.5, Targets: 2),
            new(TriangleRules.Book.CosineRule, 2.5),
            .. TriangleMeasures.Working,
        ],
        Checks =
        [
            .. SpecialTriangles.Checks,
            new(TriangleRules.Book.AngleSumOfATriangle, 1), new(TriangleRules.Book.SineRule, 2, Targets: 1),
            new(TriangleRules.Book.ProjectionsOfSides, 2.5, Targets: 1), new(TriangleRules.Book.CosineRule, 3, Targets: 1),
            .. TriangleMeasures.Checks,
        ],
    };
}
