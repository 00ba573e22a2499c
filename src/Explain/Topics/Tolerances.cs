namespace Explain;

/// <summary>How far an answer may be out: the extremes over all values of the measurements between their bounds.</summary>
internal sealed class Tolerances(Items<Premise> premises, Ledger ledger)
{
    private readonly Premise[] measured = [.. premises.Where(p => p is { Within: not null, Says: Compare })];

    public bool Any => measured.Length > 0;

    /// <summary>The bounds of a known quantity; null when the data carry no tolerances or there is no bound.</summary>
    public Bounds? Of(Symbol symbol) => Extremes(symbol) is { } bounded ? Of(symbol, bounded) : null;

    /// <summary>Its extremes as bounds, in its own unit.</summary>
    public Bounds Of(Symbol symbol, Bounded bounded)
    {
        Value found = ledger.Evaluate(new ValueOf(ledger.ClaimOf(symbol)))!;
        return new(bounded.Least.Value.In(found.Unit), bounded.Greatest.Value.In(found.Unit), new Subdivided(bounded.Boxes, At(bounded.Least), At(bounded.Greatest)));
    }

    /// <summary>The extremes of a known quantity; null when the data carry no tolerances or there is no bound.</summary>
    public Bounded? Extremes(Symbol symbol)
    {
        if (!Any) return null;
        ledger.Work.GoOn();
        Expr formula = Open(ledger.ClaimOf(symbol));
        Items<BoxSide> box = [.. measured.Select(Side).Where(s => formula.Symbols().Contains(s.Of))];
        return box.Count == 0 ? null : Explain.Extremes.Of(formula, box) as Bounded;
    }

    private static Items<Binding> At(Extreme extreme) => [.. extreme.At.Where(a => a.At.Exact is not null).Select(a => new Binding(a.Of, new Quantity(a.At.Exact!, a.At.Unit)))];

    private static Symbol SymbolOf(Premise premise) => ((SymbolUse)((Compare)premise.Says).Terms[0]).Symbol;

    /// <summary>The closed formula of a claim, measured givens left as symbols.</summary>
    public Expr Open(ClaimId claim) => ledger.Opened(claim, id => measured.FirstOrDefault(m => m.Id == id) is { } premise ? SymbolOf(premise) : null);

    private static BoxSide Side(Premise premise)
    {
        Compare says = (Compare)premise.Says;
        Value middle = ((Evaluated)Evaluator.Evaluate(says.Terms[1])).Value, within = ((Evaluated)Evaluator.Evaluate(premise.Within!)).Value.In(middle.Unit);
        Fractions.Fraction m = middle.Exact!.Rational!.Value, w = within.Exact!.Rational!.Value;
        return new(SymbolOf(premise), m - w, m + w, middle.Unit);
    }
}
