namespace Explain;

/// <summary>What is to be found.</summary>
internal static partial class GoalWords
{
    [Phrase("goal.find")]
    public static partial Phrase Find(string what);

    [Phrase("goal.bounds")]
    public static partial Phrase Bounds(Symbol of);

    [Phrase("goal.angles")]
    public static partial Phrase Angles(Polygon of);

    [Phrase("goal.sides")]
    public static partial Phrase Sides(Polygon of);

    [Phrase("goal.sides-and-angles")]
    public static partial Phrase SidesAndAngles(Polygon of);

    [Phrase("goal.all-sides-and-angles")]
    public static partial Phrase AllSidesAndAngles();

    [Phrase("goal.count")]
    public static partial Phrase Count();

    [Phrase("goal.prove")]
    public static partial Phrase Prove(Statement that);

    [Phrase("goal.show")]
    public static partial Phrase Show(Statement that);
}
