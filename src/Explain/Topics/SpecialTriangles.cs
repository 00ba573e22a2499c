namespace Explain;

/// <summary>The tools of right-angled, isosceles and equilateral triangles; cheaper than those of any triangle, so that they are taken where they apply.</summary>
internal static class SpecialTriangles
{
    /// <summary>What equal sides and equal angles give at once.</summary>
    public static Items<CostedRule> Equalities { get; } =
    [
        new(IsoscelesRules.Book.EqualSides, 0.5), new(IsoscelesRules.Book.EqualAngles, 0.5), new(IsoscelesRules.Book.IsoscelesTriangle, 0.5),
        new(IsoscelesRules.Book.IsoscelesTriangleConverse, 1), new(IsoscelesRules.Book.EquilateralTriangleAngles, 1),
    ];

    public static Items<CostedRule> Working { get; } =
    [
        .. Equalities, Summing(IsoscelesRules.Book.IsoscelesAngleSum, 1), Summing(IsoscelesRules.Book.EqualAnglesSum, 1),
        Summing(RightAngleRules.Book.AcuteAnglesOfARightAngledTriangle, 0.5),
        new(RightAngleRules.Book.Pythagoras, 1), new(RightAngleRules.Book.SineRatio, 1), new(RightAngleRules.Book.CosineRatio, 1), new(RightAngleRules.Book.TangentRatio, 1),
        new(RightAngleRules.Book.PythagorasConverse, 0.75, Targets: 1), new(RightAngleRules.Book.AcuteAngleFromSine, 0.25, Targets: 1),
        new(RightAngleRules.Book.AngleFromTangent, 0.25, Targets: 1), new(InverseRules.Book.AngleFromCosine, 0.5, Targets: 1),
    ];

    public static Items<CostedRule> Checks { get; } =
    [
        new(RightAngleRules.Book.Pythagoras, 1), new(RightAngleRules.Book.TangentRatio, 1.5),
        new(RightAngleRules.Book.SineRatio, 1.5), new(RightAngleRules.Book.CosineRatio, 1.5),
    ];

    private static CostedRule Summing(Rule rule, double cost) => new(rule, cost) { With = TriangleRules.Book.AngleSumOfATriangle };
}
