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
    public Bounded? Extremes(Symbol symbol) => Range(symbol) as Bounded;

    /// <summary>What the measurements make of a known quantity between their bounds; null when it does not vary with them.</summary>
    public Evaluation? Range(Symbol symbol)
    {
        if (!Any) return null;
        ledger.Work.GoOn();
        Expr formula = Open(ledger.ClaimOf(symbol));
        return formula.Symbols().Count > 0 && Box(formula) is { } box ? Explain.Extremes.Of(formula, box) : null;
    }

    /// <summary>Whether the formula has a value all over the box of its measurements.</summary>
    public bool Covers(Expr formula) => Box(formula) is { } box && Explain.Extremes.Of(formula, box) is Bounded;

    /// <summary>The range of each quantity of a formula, one point for what is exact; null where one has no exact number.</summary>
    public Items<BoxSide>? Box(Expr formula)
    {
        BoxSide?[] sides = [.. formula.Symbols().Select(s => premises.FirstOrDefault(p => p.Says is Compare && SymbolOf(p) == s) is { } premise ? Side(premise) : null)];
        return sides.Contains(null) ? null : [.. sides.OfType<BoxSide>()];
    }

    /// <summary>Whether one measurement alone makes more than half of the width between the bounds.</summary>
    public bool Holds(MostOf most)
    {
        Expr formula = Open(ledger.ClaimOf(((SymbolUse)most.What).Symbol));
        return Box(formula) is { } box && Share.IsMost(formula, box, most.With);
    }

    private static Items<Binding> At(Extreme extreme) => [.. extreme.At.Where(a => a.At.Exact is not null).Select(a => new Binding(a.Of, new Quantity(a.At.Exact!, a.At.Unit)))];

    private static Symbol SymbolOf(Premise premise) => ((SymbolUse)((Compare)premise.Says).Terms[0]).Symbol;

    /// <summary>The formula of a claim in what is given.</summary>
    public Expr Open(ClaimId claim) => ledger.Opened(claim, id => premises.FirstOrDefault(p => p.Id == id) is { Says: Compare { Terms: [SymbolUse, Quantity] } } premise ? SymbolOf(premise) : null);

    /// <summary>The range of a measurement; null where its middle or its margin is no rational number.</summary>
    private static BoxSide? Side(Premise premise)
    {
        if (Evaluator.Evaluate(((Compare)premise.Says).Terms[1]) is not Evaluated { Value: { Exact.Rational: { } middle } value }) return null;
        if (premise.Within is not { } margin) return new(SymbolOf(premise), middle, middle, value.Unit);
        return Evaluator.Evaluate(margin) is Evaluated { Value: var within } && within.In(value.Unit).Exact?.Rational is { } width
            ? new(SymbolOf(premise), middle - width, middle + width, value.Unit) : null;
    }
}
