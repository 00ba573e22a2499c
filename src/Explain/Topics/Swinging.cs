namespace Explain;

/// <summary>What a solution says where the given angle is not between the two given sides, and so may fit two triangles.</summary>
internal sealed class Swinging(RuleBook book, Ledger ledger, SwingingSide given)
{
    private readonly AmbiguousCase count = new(book, ledger, given);

    public static Swinging? Of(RuleBook book, Ledger ledger, Polygon triangle) =>
        SwingingSide.Of(triangle, ledger) is { } given && !given.IsRight(ledger) ? new(book, ledger, given) : null;

    public Items<Remark> Plan => [new(TopicPhrases.CountFirst(), null), new(TopicPhrases.UseSineRule(given.Opposite), null)];

    /// <summary>The count of triangles.</summary>
    public Passage? Count() => count.Count();

    /// <summary>How an answer begins where both triangles answer.</summary>
    public Phrase? Several(Split? split) => split is { Cases: [{ Label: not null }, ..] } ? TopicPhrases.TwoPositions(given.Moving) : null;

    /// <summary>The working with its cases named by where the moving corner is, and a remark on what a calculator shows.</summary>
    public Reached Named(Reached reached)
    {
        if (reached.Steps is not [.., Split last]) return reached;
        Split split = last with { Remarks = [new(TopicPhrases.CalculatorShowsOne(), null)] };
        if (reached.Cases.Count == 2 && count.Foot is { } foot) split = new Positions(book, given, foot).In(split, reached.Cases);
        return reached with { Steps = [.. reached.Steps.Take(reached.Steps.Count - 1), split] };
    }

    /// <summary>How many triangles there would be with other lengths; null where the length may be somewhat different, or the question chooses among the triangles.</summary>
    public Passage? OtherLengths(Problem problem) => problem.Given.Any(g => g.Of == given.Opposite) && problem.Given.All(g => g.Within is null)
        && !problem.Figure.Any(f => f.Says is Place { Kind: PlaceKind.Acute or PlaceKind.Obtuse }) ? new OtherLengths(book, ledger, given, count).Passage() : null;

    /// <summary>The check by the roots of a quadratic equation; null where it cannot be set up.</summary>
    public Passage? Check(Items<(string Name, Ledger Ledger)> held, IEnumerable<Symbol> answers, Problem problem) =>
        new RootsCheck(book, ledger, given, count.Foot).Of(held, answers, FreeLetter(problem));

    /// <summary>A letter that the problem does not use.</summary>
    private static Letter FreeLetter(Problem problem)
    {
        HashSet<Letter> used = [.. problem.Given.SelectMany(g => g.Value.Symbols()).OfType<Letter>()];
        return new[] { "t", "x", "y", "z", "u" }.Select(n => new Letter(n)).First(l => !used.Contains(l));
    }
}
