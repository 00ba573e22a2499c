namespace Explain;

/// <summary>A value that gets a symbol of its own, to be used in later lines.</summary>
/// <param name="Symbol">The symbol.</param>
/// <param name="Is">Its formula.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Reason">Why; null where none is given.</param>
public sealed record ExplainedValue(Letter Symbol, Expr Is, Unit Unit, ExplainedReason? Reason) : ExplainedLine(Reason)
{
    internal override ExplainedLine Put(IReadOnlyDictionary<Symbol, Expr> by) => this with { Is = Put(Is, by) };
}
