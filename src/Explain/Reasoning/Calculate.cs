namespace Explain;

/// <summary>Makes one step of one relation with one unknown.</summary>
internal static class Calculate
{
    /// <summary>The step, recorded in the ledger; null when its value lies outside the domain, so that no such figure exists.</summary>
    public static Calculation? Step(Ledger ledger, Edge edge)
    {
        Expr formula = edge.Solved.Formula;
        if (ledger.Evaluate(formula) is null) return null;
        Calculation step = By(ledger, edge.Target, formula, Reasons.Use(ledger, edge.Instance, formula.Symbols())) with { Law = Law(edge.Solved) };
        ledger.Learn(step);
        return step;
    }

    /// <summary>The step that finds a quantity by a formula that has a value; the ledger gives it its name and learns nothing.</summary>
    public static Calculation By(Ledger ledger, Symbol target, Expr formula, RuleUse why)
    {
        Items<Binding> bindings = [.. formula.Symbols().Select(s => new Binding(s, ledger.ValueOf(s)))];
        return new(ledger.NextStep(), Compare.Equal(target, formula), why, [], target, formula, bindings, ledger.Evaluate(formula)!);
    }

    /// <summary>The law as a textbook writes it before it is solved: either way up, with the unknown on the left.</summary>
    private static Items<Compare> Law(Isolation solved)
    {
        Items<EquationLine> opening = [.. solved.Lines.TakeWhile(l => l.By.Kind is MoveKind.Start or MoveKind.Invert)];
        bool isTotal = opening.Count > 0 && opening[^1].Says.Right is Quantity;
        return opening.Count == solved.Lines.Count || opening.Count == 0 || isTotal ? [] : [Compare.Equal(opening[^1].Says.Left, opening[^1].Says.Right)];
    }
}
