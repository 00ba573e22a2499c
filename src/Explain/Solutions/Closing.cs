namespace Explain;

/// <summary>Closed formulas of claims: every value traced back to the givens, so that nothing is rounded on the way.</summary>
internal sealed class Closing
{
    private readonly Dictionary<ClaimId, Expr> closed, stated = [];

    public Closing() => closed = [];

    private Closing(Closing other) => (closed, stated) = (new(other.closed), new(other.stated));

    public Closing Fork() => new(this);

    /// <summary>Takes the value of a claim: a formula in which values of earlier claims may stand.</summary>
    public void Add(ClaimId claim, Expr value)
    {
        stated[claim] = value;
        closed[claim] = Close(value);
    }

    /// <summary>The formula of a claim in which some claims are left as symbols.</summary>
    public Expr Open(ClaimId claim, Func<ClaimId, Symbol?> kept) => kept(claim) is { } symbol ? symbol
        : stated[claim].Substitute(e => e is ValueOf value ? Open(value.Claim, kept) : null);

    /// <summary>The formula with the value of every claim put in.</summary>
    public Expr Close(Expr expr) => expr.Substitute(e => e is ValueOf value ? closed[value.Claim] : null);
}
