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
            new(RightAngleRules.Book.CosineRatio, 1), new(PerpendicularRules.Book.PartsOfASegment, 0.5), new(TriangleRules.Book.ProjectionsOfSides, 3, Targets: 1),
            new(TriangleRules.Book.CosineRule, 3, Targets: 1), new(TriangleRules.Book.AngleSumOfATriangle, 4),
        ],
        Closed = [new(PerpendicularRules.Book.HeightOnABaseline, 1, Targets: 1)],
        Cautions = [TopicPhrases.Outdoors(), TopicPhrases.Permission()],
        Plan = problem =>
        [
            new(TopicPhrases.FindTheRest(), null),
            .. problem.Find.Select(g => g.Wanted).OfType<DistanceToLine>().Take(1).Select(d => new Remark(TopicPhrases.Height(d.From, d.To), null)),
        ],
    };
}
