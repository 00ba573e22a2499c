namespace Explain;

/// <summary>Adds a statement to a figure.</summary>
internal static class FigureEntry
{
    public const string Key = "figure";

    public static Problem Add(Problem problem, string text, Position at) => StatementGrammar.TryRead(text, out Statement? statement, out Fault? fault)
        ? problem with { Figure = problem.Figure.With(new(statement, at)) }
        : problem.WithUnread(Key, text, fault, at);
}
