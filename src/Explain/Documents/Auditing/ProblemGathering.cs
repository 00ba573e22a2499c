namespace Explain;

/// <summary>Collects what a problem brings to a page: its figure, its measurements as typed, its goals and its words.</summary>
internal sealed class ProblemGathering(Problem problem, IClaims claims, Evidence into) : EvidenceGathering(claims, into)
{
    public void Take()
    {
        foreach (FigureStatement statement in problem.Figure) Take(statement.Says);
        foreach (Given given in problem.Given) Take(given);
        foreach (Goal goal in problem.Find) Take(goal);
        foreach (NameInStory name in problem.Names) Into.Names.Add(name.Of);
        TakeWords();
    }

    public void TakeWords() => Into.Texts.UnionWith(Words().Select(PlainText));

    /// <summary>A measurement: the digits and the letters that were typed, its value, and how far it may be out.</summary>
    public void Take(Given given)
    {
        Take(given.Of);
        Take(given.Value);
        if (given.Within is { } within) Take(within);
        Typed(given.Typed);
    }

    /// <summary>Text without its line breaks, as a paragraph prints it.</summary>
    public static string PlainText(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private void Take(Goal goal)
    {
        if (goal.Wanted is { } wanted) Take(wanted);
        if (goal.Shape is { } shape) Take(shape);
        if (goal.Statement is { } statement) Take(statement);
    }

    private IEnumerable<string> Words() =>
    [
        problem.Title ?? "", problem.Topic?.Name ?? "", .. (problem.Question ?? "").Split("\n\n"), .. problem.Parts.Select(p => p.Words),
        .. problem.Names.Select(n => n.Is), .. problem.Assume, .. problem.Find.Select(g => g.AsTyped), .. problem.Find.Select(g => g.Letter).OfType<string>(),
    ];
}
