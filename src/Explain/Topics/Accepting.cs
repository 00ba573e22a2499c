namespace Explain;

/// <summary>
/// What the topics about triangles go by when a problem names no topic. A length that is asked for from a length and an angle may be the
/// matter of either of them; angles, and all sides and angles, are asked of a triangle for its own sake.
/// </summary>
internal static class Accepting
{
    /// <summary>One triangle and no other point; quantities of it, or all its sides or angles.</summary>
    public static bool OneTriangle(Problem problem) => Rays.Triangles(problem).ToArray() is [var triangle]
        && problem.Figure.SelectMany(f => Mentions.Points(f.Says)).All(triangle.Corners.Contains)
        && problem.Find.All(g => g.Kind is GoalKind.Value or GoalKind.Bounds or GoalKind.Angles or GoalKind.Sides or GoalKind.Count);

    /// <summary>Triangles on a baseline that is given, with angles or bearings; lengths and distances are asked for.</summary>
    public static bool Baseline(Problem problem) => Rays.Triangles(problem).Any()
        && problem.Given.Any(g => g.Of is Length) && problem.Given.Any(g => g.Of is Angle or Bearing)
        && problem.Find.All(g => g.Kind is GoalKind.Value or GoalKind.Bounds or GoalKind.ByMethod && g.Wanted is Length or DistanceToLine);
}
