namespace Explain;

/// <summary>Two ways to go on; only the one used is printed.</summary>
/// <param name="If">The conditions of the first way, all of which must hold.</param>
/// <param name="Then">The first way.</param>
/// <param name="Otherwise">The second way; empty where the lines after the branch follow.</param>
/// <param name="Reason">Why; null where none is given.</param>
public sealed record ExplainedBranch(Items<ExplainedCondition> If, Items<ExplainedLine> Then, Items<ExplainedLine> Otherwise, ExplainedReason? Reason)
    : ExplainedLine(Reason)
{
    internal override ExplainedLine Put(IReadOnlyDictionary<Symbol, Expr> by) => this with
    {
        If = Put(If, by), Then = [.. Then.Select(l => l.Put(by))], Otherwise = [.. Otherwise.Select(l => l.Put(by))],
    };
}
