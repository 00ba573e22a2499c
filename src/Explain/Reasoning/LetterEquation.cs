namespace Explain;

/// <summary>Finds the letter in which measurements are given, from a relation of which every quantity is given.</summary>
internal sealed class LetterEquation(RuleBook book, Items<CostedRule> rules, Ledger ledger)
{
    /// <summary>The step that finds it, by the cheapest relation that does; null when none does.</summary>
    public Algebra? Solve(Letter letter) => rules.OrderBy(r => r.Cost).SelectMany(Instances).Select(i => By(i, letter)).FirstOrDefault(a => a is not null);

    private IEnumerable<Instance> Instances(CostedRule rule) => book.Find(rule.Rule.Id) is { Law: not null } schema
        ? Explain.Instances.Of(schema, ledger.Facts, ledger.Arrangement).Where(i => i.When.OfType<Compare>().All(ledger.Holds)) : [];

    private Algebra? By(Instance instance, Letter letter)
    {
        Symbol[] quantities = [.. instance.Quantities(ledger.Arrangement)];
        if (quantities.Distinct().Count() < quantities.Length || quantities.Any(q => ledger.Stated(q) is null)) return null;
        Equation equation = new(Put(instance.Law!.Left), Put(instance.Law.Right));
        if (!equation.Left.Symbols().Concat(equation.Right.Symbols()).Distinct().SequenceEqual([letter])) return null;
        if (LinearEquation.Solve(equation, letter) is not { } solved || solved.Formula.Symbols().Count > 0) return null;
        return new Algebra(ledger.NextStep(), Compare.Equal(letter, solved.Formula), Reasons.Use(ledger, instance, quantities), Compare.Equal(equation.Left, equation.Right), letter, solved.Lines);
    }

    private Expr Put(Expr side) => side.Substitute(e => e is SymbolUse use ? ledger.Stated(use.Symbol) : null);
}
