namespace Explain;

/// <summary>The quantities that a thing to find asks for.</summary>
internal static class Asked
{
    public static bool IsSupported(Goal goal) => goal.Kind is GoalKind.Value or GoalKind.Bounds or GoalKind.Angles or GoalKind.Sides or GoalKind.Triangle or GoalKind.Count;

    public static IEnumerable<Symbol> Of(Goal goal, Polygon triangle) => goal.Kind switch
    {
        GoalKind.Angles => TriangleParts.Angles(goal.Shape!),
        GoalKind.Sides => TriangleParts.Sides(goal.Shape!),
        GoalKind.Triangle => [.. TriangleParts.Sides(goal.Shape ?? triangle), .. TriangleParts.Angles(goal.Shape ?? triangle)],
        GoalKind.Count => [],
        _ => [goal.Wanted!],
    };

    /// <summary>Whether the answer is a list, each of whose values needs its own name.</summary>
    public static bool IsList(Goal goal) => goal.Kind is GoalKind.Angles or GoalKind.Sides or GoalKind.Triangle;
}
