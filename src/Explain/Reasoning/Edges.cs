namespace Explain;

/// <summary>Lists the ways from quantity to quantity that the rules open in a figure.</summary>
internal static class Edges
{
    public static Items<Edge> Of(Items<CostedRule> rules, RuleBook book, Ledger ledger)
    {
        Dictionary<(RuleId, Symbol, string), Edge> edges = [];
        foreach (CostedRule rule in rules)
        {
            foreach (Instance instance in Instances.Of(book.Find(rule.Rule.Id)!, ledger.Facts, ledger.Arrangement).Where(i => i.When.OfType<Compare>().All(ledger.HoldsForCertain)))
                foreach (Edge edge in Of(instance, rule, ledger.Arrangement))
                {
                    ledger.Work.UseRule();
                    edges.TryAdd((rule.Rule.Id, edge.Target, Key(edge)), edge);
                }
        }

        return [.. edges.Values];
    }

    private static IEnumerable<Edge> Of(Instance instance, CostedRule rule, Arrangement arrangement)
    {
        Symbol[] quantities = [.. instance.Quantities(arrangement)];
        if (quantities.Distinct().Count() < quantities.Length) yield break;
        foreach (Symbol target in quantities.Take(rule.Targets == 0 ? quantities.Length : rule.Targets))
        {
            if (Isolated(instance.Law!, target) is not { } found) continue;
            yield return new Edge(instance, found.Target, found.Solved, [.. quantities.Where(q => q != target)], rule.Cost);
        }
    }

    /// <summary>The target itself, or the sine, cosine or tangent in which it is hidden.</summary>
    private static (Symbol Target, Isolation Solved)? Isolated(Equation law, Symbol target)
    {
        if (target is Angle angle && Ratios(law, angle) is [Apply hidden])
            return Isolate.For(law, hidden) is { } ratio ? (new Ratio(hidden.Function, angle), ratio) : null;
        return Isolate.For(law, new SymbolUse(target)) is { Second: not SecondValue.Supplement } solved ? (target, solved) : null;
    }

    private static Apply[] Ratios(Equation law, Angle angle) =>
        [.. law.Left.Subtrees().Concat(law.Right.Subtrees()).OfType<Apply>().Where(a => a.To == new SymbolUse(angle)).Distinct()];

    private static string Key(Edge edge) => string.Join('|', edge.Inputs.Select(i => i.ToString()).Order(StringComparer.Ordinal));
}
