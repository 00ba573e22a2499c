namespace Explain;

/// <summary>The result; no line after it is used.</summary>
/// <param name="Symbol">The symbol of the result.</param>
/// <param name="Is">Its formula.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Reason">Why; null where none is given.</param>
public sealed record ExplainedResult(Letter Symbol, Expr Is, Unit Unit, ExplainedReason? Reason) : ExplainedLine(Reason)
{
    internal override ExplainedLine Put(IReadOnlyDictionary<Symbol, Expr> by) => this with { Is = Put(Is, by) };
}
