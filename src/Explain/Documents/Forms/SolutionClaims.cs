namespace Explain;

/// <summary>The claims of a solution with their values, each evaluated from the givens.</summary>
internal sealed class SolutionClaims(Solution solution, StepNumbers? numbers) : IClaims
{
    private readonly Dictionary<ClaimId, Claimed> claims = solution.Premises.Concat<Claimed>(solution.Steps).ToDictionary(c => c.Id);

    public Claimed? Find(ClaimId id) => claims.GetValueOrDefault(id);

    public string? NumberOf(ClaimId id) => numbers?.Of(id);

    public ClaimValue? ValueOf(ClaimId id) => Find(id) switch
    {
        Calculation c => new(c.Value, c.Formula, IsGiven: false),
        Premise premise when Meaning.Value(premise.Says) is (_, var value) => new(Evaluate(value), value, IsGiven: true),
        { Says: Compare { Terms: [.., var last] } } claim => last is ValueOf other ? ValueOf(other.Claim) : new(Evaluate(last), last, claim is Premise),
        _ => null,
    };

    public Value? Evaluate(Expr expr)
    {
        Expr closed = Close(expr);
        return closed.Subtrees().Any(p => p is SymbolUse or Explain.ValueOf) ? null : (Evaluator.Evaluate(closed) as Evaluated)?.Value;
    }

    /// <summary>The formula with every value written out from the givens.</summary>
    private Expr Close(Expr expr) => expr.Substitute(part => part is ValueOf of ? Find(of.Claim) switch
    {
        Calculation c => Close(Bound(c)),
        Premise premise when Meaning.Value(premise.Says) is (_, var value) => value,
        { Says: Compare { Terms: [.., var last] } } => Close(last),
        _ => null,
    } : null);

    /// <summary>The formula of a calculation with its symbols exchanged for what stands for them.</summary>
    public static Expr Bound(Calculation calculation) => calculation.Formula.Substitute(part =>
        part is SymbolUse use ? calculation.Bindings.FirstOrDefault(b => b.Of == use.Symbol)?.Is : null);
}
