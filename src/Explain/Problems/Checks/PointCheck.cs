namespace Explain;

/// <summary>Finds points that the figure does not mention, and figures with too many.</summary>
internal static class PointCheck
{
    /// <summary>The points of the figure, in order of the alphabet.</summary>
    public static Items<Point> Of(Problem problem) =>
        [.. problem.Figure.SelectMany(f => Mentions.Points(f.Says)).Distinct().OrderBy(p => p.Name, StringComparer.Ordinal)];

    public static IEnumerable<ProblemError> Check(Problem problem)
    {
        Items<Point> points = Of(problem);
        if (points.Count > problem.Limits.Points)
            yield return ProblemEntries.Error(new(ErrorCodes.TooLarge, ProblemPhrases.TooManyPoints(points.Count, problem.Limits.Points), ProblemPhrases.RaiseTheLimit()), problem.Figure[0].At);
        if (points.Count == 0) yield break;
        HashSet<Point> known = [.. points, .. problem.Unread.Where(u => u.Key == FigureEntry.Key).SelectMany(u => Named(u.Text))];
        foreach ((string typed, IEnumerable<Point> of, Position at) in Entries(problem))
            if (of.FirstOrDefault(p => !known.Contains(p)) is { } unknown) yield return ProblemEntries.Error(Unknown(typed, unknown, [.. known.OrderBy(p => p.Name, StringComparer.Ordinal)]), at);
    }

    private static IEnumerable<(string Typed, IEnumerable<Point> Of, Position At)> Entries(Problem problem) =>
    [
        .. problem.Given.Select(g => (QuantityGrammar.Write(g.Of, English.UnitedKingdom), Mentions.Points(g.Of), g.At)),
        .. problem.Extras.Select(e => (e.Text, e.Key == ExtraEntry.FirstCut ? Named(e.Text) : [], e.At)),
        .. problem.Find.Select(g => (g.AsTyped, Mentioned(g), g.At)),
        .. problem.Names.Select(n => (n.Of, Named(n.Of), n.At)),
    ];

    private static IEnumerable<Point> Mentioned(Goal goal) =>
    [
        .. goal.Wanted is null ? [] : Mentions.Points(goal.Wanted),
        .. goal.Shape is null ? [] : Mentions.Points(goal.Shape),
        .. goal.Statement is null ? [] : Mentions.Points(goal.Statement),
    ];

    private static IEnumerable<Point> Named(string text) =>
        (Tokens.Read(text) ?? []).Where(t => t.Kind == TokenKind.Name).SelectMany(t => PointNames.Distinct(t.Text) ?? []);

    private static Fault Unknown(string typed, Point unknown, Items<Point> points)
    {
        Phrase message = ProblemPhrases.UnknownPoint(typed, unknown, points);
        Point? near = points.Where(p => !typed.Contains(p.Name, StringComparison.Ordinal)).MinBy(p => Away(p, unknown));
        Phrase remedy = near is null || !typed.Contains(unknown.Name, StringComparison.Ordinal)
            ? ProblemPhrases.SayWhereTheNewPointIs(unknown)
            : ProblemPhrases.SayWhereItIs(typed.Replace(unknown.Name, near.Name, StringComparison.Ordinal), unknown);
        return new(ErrorCodes.UnknownPoint, message, remedy);
    }

    private static int Away(Point one, Point other) => int.Abs(one.Name[0] - other.Name[0]) * 2 + (one.Name.Length == other.Name.Length ? 0 : 1);
}
