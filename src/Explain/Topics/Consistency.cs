namespace Explain;

/// <summary>Whether a measurement agrees with what others give.</summary>
internal sealed class Consistency(RuleBook book, Topic topic, Problem problem, Work work)
{
    /// <summary>What the other measurements of a set give instead; null when they agree with this one or do not fix it.</summary>
    public Value? Derived(Items<Given> set, Given given) => Without(set, given.Of) is { Ledger: var ledger }
        && ledger.Compare(given.Of, given.Value) is not (null or 0) ? ledger.Evaluate(given.Of) : null;

    /// <summary>A quantity as a formula in the other measurements; null when they do not fix it.</summary>
    public Expr? Formula(Symbol of) => Without(problem.Given, of) is { Ledger: var ledger, Premises: var premises }
        ? ledger.Opened(ledger.ClaimOf(of), id => premises.FirstOrDefault(p => p.Id == id) is { Says: Compare { Terms: [SymbolUse measured, ..] } } ? measured.Symbol : null) : null;

    /// <summary>What the measurements of a set, without that of one quantity, say of it; null when they do not fix it.</summary>
    private Opening? Without(Items<Given> set, Symbol of)
    {
        Opening others = new(problem with { Given = [.. set.Where(g => g.Of != of)] }, topic, work);
        bool found = new Working(book, topic.Working).Reach(others.Ledger, [of]) is { Impossible: false, Cases.Count: 0 };
        return found && others.Ledger.Knows(of) ? others : null;
    }
}
