namespace Explain;

/// <summary>Distances that cannot be walked, from a baseline and the angles at its ends.</summary>
internal static class InaccessibleDistance
{
    public static Topic Topic { get; } = new(new("inaccessible distance"), Starters.Baseline)
    {
        Words = new(TopicPhrases.DistanceFigure(), TopicPhrases.DistanceGiven(), TopicPhrases.DistanceFind()),
        Accepts = Accepting.Baseline,
        Working =
        [
            .. SpecialTriangles.Working,
            new(TriangleRules.Book.AngleSumOfATriangle, 1), new(TriangleRules.Book.SineRule, 1.5, Targets: 1),
            new(PerpendicularRules.Book.PartsOfASegment, 0.5), new(PerpendicularRules.Book.WholeLessAPart, 0.5),
            new(TriangleRules.Book.CosineRule, 2.5),
            new(AdjacentAngleRules.Book.AnglesAtAPointOfALine, 0.5), new(AdjacentAngleRules.Book.AngleBySubtraction, 0.5, Targets: 1),
            new(AdjacentAngleRules.Book.AngleByAddition, 0.5, Targets: 1), new(AdjacentAngleRules.Book.AngleRoundTheOtherWay, 0.5, Targets: 1),
            new(BearingRules.Book.AngleBetweenBearings, 0.5, Targets: 1), new(BearingRules.Book.AngleAcrossNorth, 0.5, Targets: 1),
            new(BearingRules.Book.BackBearing, 0.5, Targets: 1), new(BearingRules.Book.BackBearingOfALargeBearing, 0.5, Targets: 1),
            new(BearingRules.Book.BearingByTurningClockwise, 0.5, Targets: 1), new(BearingRules.Book.BearingByTurningPastNorth, 0.5, Targets: 1),
            new(BearingRules.Book.BearingByTurningAnticlockwise, 0.5, Targets: 1), new(BearingRules.Book.BearingByTurningBackPastNorth, 0.5, Targets: 1),
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
