namespace Explain;

/// <summary>Adds a thing to find.</summary>
internal static class FindEntry
{
    public const string Key = "find";

    public static Problem Add(Problem problem, string? letter, string text, Position at) => GoalReader.Read(text, out Fault? fault) is { } goal
        ? problem with { Find = problem.Find.With(goal with { Letter = letter, At = at }) }
        : problem.WithUnread(Key, text, fault!, at);
}
