namespace Explain;

/// <summary>A value found by another explained method, whose lines fold.</summary>
/// <param name="Symbol">The symbol of the value here.</param>
/// <param name="Formula">The other method.</param>
/// <param name="Arguments">What is put in.</param>
/// <param name="Reason">Why; null where none is given.</param>
public sealed record ExplainedCall(Letter Symbol, ExplainedFormula Formula, Items<Expr> Arguments, ExplainedReason? Reason) : ExplainedLine(Reason)
{
    internal override ExplainedLine Put(IReadOnlyDictionary<Symbol, Expr> by) => this with { Arguments = [.. Arguments.Select(a => Put(a, by))] };
}
