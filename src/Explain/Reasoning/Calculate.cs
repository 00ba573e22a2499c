namespace Explain;

/// <summary>Makes one step of one relation with one unknown.</summary>
internal static class Calculate
{
    /// <summary>The step, recorded in the ledger; null when its value lies outside the domain, so that no such figure exists.</summary>
    public static Calculation? Step(Ledger ledger, Edge edge)
    {
        Expr formula = edge.Solved.Formula;
        Items<Binding> bindings = [.. formula.Symbols().Distinct().Select(s => new Binding(s, ledger.ValueOf(s)))];
        if (ledger.Evaluate(formula) is not { } value) return null;
        ClaimId id = ledger.NextStep();
        ledger.Learn(edge.Target, id, formula.Substitute(e => e is SymbolUse use ? ledger.ValueOf(use.Symbol) : null));
        RuleUse why = new(edge.Instance.Schema.Rule.Id, Reasons.Roles(ledger, edge.Instance), Reasons.From(ledger, edge.Instance, formula.Symbols()));
        return new Calculation(id, Compare.Equal(new SymbolUse(edge.Target), formula), why, Law(edge.Solved), edge.Target, formula, bindings, value);
    }

    /// <summary>The law as a textbook writes it before it is solved: either way up, with the unknown on the left.</summary>
    private static Items<Compare> Law(Isolation solved)
    {
        Items<EquationLine> opening = [.. solved.Lines.TakeWhile(l => l.By.Kind is MoveKind.Start or MoveKind.Invert)];
        bool isTotal = opening.Count > 0 && opening[^1].Says.Right is Quantity;
        return opening.Count == solved.Lines.Count || opening.Count == 0 || isTotal ? [] : [Compare.Equal(opening[^1].Says.Left, opening[^1].Says.Right)];
    }
}
