namespace Explain;

/// <summary>The relations of a triangle's area, perimeter, heights and circles with its sides and angles.</summary>
internal static class TriangleMeasures
{
    public static Items<CostedRule> Working { get; } =
    [
        new(AreaRules.Book.AreaFromLegs, 0.75), new(AreaRules.Book.AreaFromTwoSides, 1), new(AreaRules.Book.AreaFromBaseAndHeight, 0.9),
        new(AreaRules.Book.HalfPerimeter, 0.5), new(AreaRules.Book.HalfPerimeterFromSides, 1, Targets: 1), new(AreaRules.Book.HeronsFormula, 1.5, Targets: 1),
        new(AreaRules.Book.PerimeterOfAnEquilateralTriangle, 0.5), new(AreaRules.Book.PerimeterOfAnIsoscelesTriangle, 0.75), new(AreaRules.Book.PerimeterOfATriangle, 1),
        new(AreaRules.Book.PerimeterAndSines, 3, Targets: 1), new(AreaRules.Book.PerimeterAndAnAngle, 4, Targets: 1), new(PerpendicularRules.Book.DistanceBySine, 1),
        new(AreaRules.Book.AreaFromASideAndTheAngles, 5, Targets: 1),
        new(CircleRules.Book.RadiusOfTheInscribedCircle, 1), new(CircleRules.Book.InscribedCircleOnASide, 5, Targets: 2),
        new(CircleRules.Book.SineRuleAndCircle, 1), new(CircleRules.Book.DiameterOfACircle, 0.5), new(CircleRules.Book.CircleThroughTheCornersAndArea, 1.5, Targets: 2),
    ];

    /// <summary>What else applies where a height or a circle gives the sines of two angles: one of them is known to be acute.</summary>
    public static Items<CostedRule> For(Problem problem) => problem.Given.Any(g => g.Of is DistanceToLine or Measure { Kind: MeasureKind.CircumscribedRadius or MeasureKind.CircumscribedDiameter })
        ? [new(InverseRules.Book.AcuteAngleOppositeAShorterSide, 0.5, Targets: 1)] : [];

    /// <summary>Solved only for what these rules find first, so that no sum comes back to its own parts.</summary>
    public static Items<CostedRule> Checks { get; } =
    [
        new(AreaRules.Book.AreaFromBaseAndHeight, 1), new(AreaRules.Book.AreaFromTwoSides, 2), new(AreaRules.Book.AreaFromASideAndTheAngles, 3, Targets: 2),
        new(AreaRules.Book.HalfPerimeterFromSides, 1, Targets: 1), new(AreaRules.Book.HeronsFormula, 1.5, Targets: 1),
        new(AreaRules.Book.PerimeterOfATriangle, 1, Targets: 1), new(AreaRules.Book.PerimeterAndSines, 2, Targets: 2),
        new(CircleRules.Book.RadiusOfTheInscribedCircle, 1, Targets: 2), new(CircleRules.Book.InscribedCircleOnASide, 2, Targets: 2),
        new(CircleRules.Book.SineRuleAndCircle, 3), new(CircleRules.Book.DiameterOfACircle, 0.5), new(CircleRules.Book.CircleThroughTheCornersAndArea, 1.5, Targets: 2),
        new(TriangleRules.Book.CosineRule, 3), new(InverseRules.Book.AngleFromCosine, 0.5, Targets: 1),
    ];
}
