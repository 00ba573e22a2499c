namespace Explain;

/// <summary>The answer to one thing asked.</summary>
/// <param name="For">What was asked.</param>
/// <param name="Values">One value for each case and item.</param>
public sealed record Answer(Goal For, Items<AnswerValue> Values)
{
    /// <summary>The value when there is exactly one, otherwise null.</summary>
    public AnswerValue? Only => Values.Count == 1 ? Values[0] : null;
}
