namespace Explain;

/// <summary>Holds the entries of a problem against each other, and collects everything that is wrong with it.</summary>
internal static class ProblemChecks
{
    /// <summary>The problem with all its errors, in the order of the lines.</summary>
    public static Problem Checked(this Problem problem)
    {
        IEnumerable<ProblemError> all = [.. problem.EntryErrors, .. Missing(problem), .. PointCheck.Check(problem), .. TwiceCheck.Given(problem), .. TwiceCheck.Found(problem)];
        return problem.Reporting(all);
    }

    /// <summary>The problem with one more error, found by somebody who knows more than the file.</summary>
    public static Problem Reporting(this Problem problem, ProblemError error) => problem.Reporting(problem.Errors.Append(error));

    /// <summary>An error at the place of a key; without a place where there is no such key.</summary>
    public static ProblemError ErrorAt(this Problem problem, string key, Fault fault) =>
        ProblemEntries.Error(fault, [.. problem.Keys.Where(k => k.Key == key).Select(k => k.At).Take(1)]);

    private static Problem Reporting(this Problem problem, IEnumerable<ProblemError> errors)
    {
        ProblemError[] all = [.. errors.OrderBy(e => e.Lines.Count == 0 ? int.MaxValue : e.Lines[0]).ThenBy(e => e.Column)];
        return problem with { Errors = [.. all.Take(problem.Limits.Errors)], MoreErrors = problem.MoreErrors + int.Max(0, all.Length - problem.Limits.Errors) };
    }

    private static IEnumerable<ProblemError> Missing(Problem problem)
    {
        if (problem.Figure.Count == 0 && !Touched(problem, FigureEntry.Key)) yield return Absent(problem, FigureEntry.Key, ProblemPhrases.SayTheFigure());
        if (problem.Find.Count == 0 && !Touched(problem, FindEntry.Key)) yield return Absent(problem, FindEntry.Key, ProblemPhrases.SayWhatToFind());
    }

    private static bool Touched(Problem problem, string key) => problem.Unread.Any(u => u.Key == key);

    private static ProblemError Absent(Problem problem, string key, Phrase remedy) =>
        ProblemEntries.Error(new(ErrorCodes.MissingKey, ProblemPhrases.Missing(key), remedy), [.. problem.Keys.OrderBy(k => k.Key == key ? 0 : 1).Select(k => k.At).Take(1)]);
}
