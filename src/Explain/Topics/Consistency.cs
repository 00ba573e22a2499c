namespace Explain;

/// <summary>Whether a measurement agrees with what the others give.</summary>
internal sealed class Consistency(RuleBook book, Topic topic, Problem problem, Work work)
{
    /// <summary>What the other measurements give instead; null when they agree with this one or do not fix it.</summary>
    public Expr? Derived(Given given)
    {
        Problem others = problem with { Given = [.. problem.Given.Where(g => g != given)] };
        Ledger ledger = new Opening(others, topic, work).Ledger;
        if (new Working(book, topic.Working).Reach(ledger, [given.Of]) is not { Impossible: false, Cases.Count: 0 }) return null;
        if (!ledger.Knows(given.Of) || ledger.Compare(given.Of, given.Value) == 0) return null;
        return Digits.Of(ledger.Evaluate(given.Of)!);
    }
}
