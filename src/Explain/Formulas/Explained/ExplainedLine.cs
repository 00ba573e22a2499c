namespace Explain;

/// <summary>A line of an explained method.</summary>
/// <param name="Reason">Why; null where none is given.</param>
public abstract record ExplainedLine(ExplainedReason? Reason)
{
    /// <summary>The line with formulas in place of symbols.</summary>
    internal abstract ExplainedLine Put(IReadOnlyDictionary<Symbol, Expr> by);

    private protected static Expr Put(Expr expr, IReadOnlyDictionary<Symbol, Expr> by) =>
        expr.Substitute(e => e is SymbolUse use && by.TryGetValue(use.Symbol, out Expr? put) ? put : null);

    private protected static Items<ExplainedCondition> Put(Items<ExplainedCondition> conditions, IReadOnlyDictionary<Symbol, Expr> by) =>
        [.. conditions.Select(c => new ExplainedCondition(Put(c.Left, by), c.Relation, Put(c.Right, by)))];
}
