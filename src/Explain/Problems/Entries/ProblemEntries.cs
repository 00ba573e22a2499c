namespace Explain;

/// <summary>What entries have in common.</summary>
internal static class ProblemEntries
{
    /// <summary>The problem with one more thing wrong with it.</summary>
    public static Problem With(this Problem problem, Fault fault, params ReadOnlySpan<Position> at) =>
        problem with { EntryErrors = problem.EntryErrors.With(Error(fault, at)) };

    /// <summary>The problem with one more entry that could not be read.</summary>
    public static Problem WithUnread(this Problem problem, string key, string text, Fault fault, Position at) =>
        problem.With(fault, at) with { Unread = problem.Unread.With(new(key, text)) };

    /// <summary>An error at some places, on each line once.</summary>
    public static ProblemError Error(Fault fault, params ReadOnlySpan<Position> at)
    {
        Position[] places = [.. at];
        int[] lines = [.. places.Select(p => p.Line).Where(l => l > 0).Distinct().Order()];
        int column = lines.Length == 0 ? 0 : places.Where(p => p.Line == lines[0]).Min(p => p.Column);
        return new(fault.Code, [.. lines], column, fault.Message, fault.Remedy);
    }
}
