namespace Explain;

/// <summary>Whether a measurement agrees with what others give.</summary>
internal sealed class Consistency(RuleBook book, Topic topic, Problem problem, Work work)
{
    /// <summary>What the other measurements of a set give instead; null when they agree with this one or do not fix it.</summary>
    public Value? Derived(Items<Given> set, Given given)
    {
        Problem others = problem with { Given = [.. set.Where(g => g != given)] };
        Ledger ledger = new Opening(others, topic, work).Ledger;
        if (new Working(book, topic.Working).Reach(ledger, [given.Of]) is not { Impossible: false, Cases.Count: 0 }) return null;
        return ledger.Knows(given.Of) && ledger.Compare(given.Of, given.Value) is not (null or 0) ? ledger.Evaluate(given.Of) : null;
    }
}
