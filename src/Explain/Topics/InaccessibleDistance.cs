namespace Explain;

/// <summary>Distances that cannot be walked, from a baseline and the angles at its ends.</summary>
internal static class InaccessibleDistance
{
    public static Topic Topic { get; } = new(new("inaccessible distance"), Starters.Baseline)
    {
        Accepts = Accepting.Baseline,
        Working =
        [
            new(TriangleRules.Book.AngleSumOfATriangle, 1), new(TriangleRules.Book.SineRule, 1.5, Targets: 1), new(RightAngleRules.Book.SineRatio, 1),
            new(TriangleRules.Book.CosineRule, 2.5), new(InverseRules.Book.AngleFromCosine, 0.5, Targets: 1),
        ],
        Checks =
        [
            new(RightAngleRules.Book.Pythagoras, 1), new(RightAngleRules.Book.CosineRatio, 2), new(PerpendicularRules.Book.PartsOfASegment, 0.5),
            new(PerpendicularRules.Book.WholeLessAPart, 0.5, Targets: 1), new(TriangleRules.Book.ProjectionsOfSides, 8, Targets: 1),
            new(TriangleRules.Book.CosineRule, 8, Targets: 1), new(TriangleRules.Book.AngleSumOfATriangle, 9),
        ],
        Closed = [new(PerpendicularRules.Book.HeightOnABaseline, 1, Targets: 1), new(PerpendicularRules.Book.HeightBeyondABaseline, 1, Targets: 1)],
        Heading = Headings.Of,
        Cautions = [TopicPhrases.Outdoors(), TopicPhrases.Permission()],
    };
}
