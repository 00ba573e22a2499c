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
}
