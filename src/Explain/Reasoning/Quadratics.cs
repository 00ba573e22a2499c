namespace Explain;

/// <summary>Solves a law of the figure for a quantity in which it is quadratic.</summary>
internal static class Quadratics
{
    /// <summary>The step, recorded in the ledger; null where the law is not quadratic, a quantity is not known, or there is no root.</summary>
    /// <param name="ledger">What is known.</param>
    /// <param name="instance">The relation.</param>
    /// <param name="unknown">The quantity to find.</param>
    /// <param name="named">The letter to write for it.</param>
    public static Quadratic? Step(Ledger ledger, Instance instance, Symbol unknown, Letter named)
    {
        Symbol of = ledger.Arrangement.Canonical(unknown);
        Symbol[] inputs = [.. instance.Quantities(ledger.Arrangement).Where(q => q != of)];
        if (instance.Law is not { } law || !inputs.All(ledger.Knows) || QuadraticEquation.Of(law, of) is not { } equation) return null;
        RuleUse why = Reasons.Use(ledger, instance, inputs);
        ClaimId id = ledger.NextStep();
        Calculation linear = Coefficient(ledger, new(id.Name + ".b"), Quadratic.B, equation.Linear, why), constant = Coefficient(ledger, new(id.Name + ".c"), Quadratic.C, equation.Constant, why);
        Expr b = new ValueOf(linear.Id), c = new ValueOf(constant.Id);
        if (ledger.Compare(new Power(b, 2), 4 * c) is not (>= 0 and var discriminant)) return null;
        Expr[] formulas = discriminant == 0 ? [-new SymbolUse(Quadratic.B) / 2] : [RootOf((p, r) => p + r), RootOf((p, r) => p - r)];
        Calculation[] roots = [.. formulas.Select((f, i) => RootAt(ledger, new(id.Name + (i == 0 ? ".1" : ".2")), of, f, why, [new(Quadratic.B, b), new(Quadratic.C, c)]))];
        // There is none where the digits of a number cannot be told from those of an exact one.
        if (roots.Prepend(linear).Prepend(constant).Any(c => c.Value is null)) return null;
        return new(id, new AnyOf([.. roots.Select(r => Compare.Equal(of, new ValueOf(r.Id)))]), why, Compare.Equal(law.Left, law.Right), of, named, linear, constant, [.. roots]);
    }

    private static Calculation Coefficient(Ledger ledger, ClaimId id, Letter letter, Expr formula, RuleUse why) =>
        Learnt(ledger, new(id, Compare.Equal(letter, formula), why, [], letter, formula, [.. formula.Symbols().Select(s => new Binding(s, ledger.ValueOf(s)))], ledger.Evaluate(formula)!));

    /// <summary>(−b ± √(b² − 4c)) ÷ 2.</summary>
    private static Expr RootOf(Func<Expr, Expr, Expr> sign)
    {
        Expr b = new SymbolUse(Quadratic.B), c = new SymbolUse(Quadratic.C);
        return sign(-b, new Root(new Power(b, 2) - 4 * c)) / 2;
    }

    private static Calculation RootAt(Ledger ledger, ClaimId id, Symbol of, Expr formula, RuleUse why, Items<Binding> coefficients)
    {
        Items<Binding> bindings = [.. coefficients.Where(c => formula.Symbols().Contains(c.Of))];
        Expr value = formula.Substitute(e => e is SymbolUse use ? bindings.First(b => b.Of == use.Symbol).Is : null);
        ledger.Closing.Add(id, value);
        return new(id, Compare.Equal(of, formula), why, [], of, formula, bindings, ledger.Evaluate(new ValueOf(id))!);
    }

    private static Calculation Learnt(Ledger ledger, Calculation step)
    {
        ledger.Closing.Add(step.Id, ledger.WithValues(step.Formula));
        return step;
    }
}
