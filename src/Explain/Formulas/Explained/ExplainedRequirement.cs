namespace Explain;

/// <summary>What must hold for the formula to mean anything.</summary>
/// <param name="Holds">The conditions, all of which must hold.</param>
/// <param name="Reason">Why; null where none is given.</param>
public sealed record ExplainedRequirement(Items<ExplainedCondition> Holds, ExplainedReason? Reason) : ExplainedLine(Reason)
{
    internal override ExplainedLine Put(IReadOnlyDictionary<Symbol, Expr> by) => this with { Holds = Put(Holds, by) };
}
