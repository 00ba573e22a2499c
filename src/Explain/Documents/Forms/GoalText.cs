namespace Explain;

/// <summary>Says what is to be found.</summary>
internal static class GoalText
{
    /// <summary>A thing to find, as a noun; what only the topic knows, in the user's words.</summary>
    public static Items<Inline> Of(Goal goal, Speaker speaker) => goal switch
    {
        { Kind: GoalKind.Value, Wanted: { } wanted } => speaker.Say(wanted),
        { Kind: GoalKind.Bounds, Wanted: { } wanted } => speaker.Say(GoalWords.Bounds(wanted)),
        { Kind: GoalKind.Angles, Shape: { } shape } => speaker.Say(GoalWords.Angles(shape)),
        { Kind: GoalKind.Sides, Shape: { } shape } => speaker.Say(GoalWords.Sides(shape)),
        { Kind: GoalKind.Triangle } => speaker.Say(goal.Shape is { } shape ? GoalWords.SidesAndAngles(shape) : GoalWords.AllSidesAndAngles()),
        { Kind: GoalKind.Count } => speaker.Say(GoalWords.Count()),
        { Kind: GoalKind.Proof, Statement: { } statement } => speaker.Say(GoalWords.Prove(statement)),
        { Kind: GoalKind.Show, Statement: { } statement } => speaker.Say(GoalWords.Show(statement)),
        _ => [new UserRun(goal.AsTyped)],
    };

    /// <summary>An instruction: find AB and angle ABC; prove that …</summary>
    public static Items<Inline> Instruction(Items<Goal> goals, Speaker speaker)
    {
        Goal[] found = [.. goals.Where(g => !IsStatement(g))];
        Items<Inline> find = found.Length == 0 ? []
            : Sentence.Of(speaker.Say(GoalWords.Find(""), ("what", speaker.And([.. found.Select(g => Of(g, speaker))]))));
        return Sentence.Join([find, .. goals.Where(IsStatement).Select(g => Sentence.Of(Of(g, speaker)))]);
    }

    private static bool IsStatement(Goal goal) => goal is { Kind: GoalKind.Proof or GoalKind.Show, Statement: not null };
}
