namespace Explain;

/// <summary>Values compare as a step says they do.</summary>
internal static class ComparedValues
{
    public static bool Holds(Step step, Seen seen, RayNames rays) => step is Deduction { Says: Compare says, Why: { Rule.Name: "comparison-of-values", Roles.Count: 0 } why }
        && says.Terms.All(t => t.Claims().Count == 0)
        && Decide.Holds(says, (a, b) => Closed(a, why, seen, rays) is { } left && Closed(b, why, seen, rays) is { } right ? Agreement.Compare(left, right) : null) == true
        && why.From.All(id => says.Terms.SelectMany(t => t.Symbols()).Any(s => seen.Find(id)?.Of is { } of && rays.Of(of) == rays.Of(s)));

    /// <summary>The formula with each quantity as the premises of the step give it; null when one is not among them.</summary>
    private static Expr? Closed(Expr expr, RuleUse why, Seen seen, RayNames rays)
    {
        Expr put = expr.Substitute(e => e is SymbolUse use ? seen.Of(why.From).FirstOrDefault(t => t.Of is { } of && rays.Of(of) == rays.Of(use.Symbol))?.Closed : null);
        return put.Symbols().Count == 0 ? seen.Close(put) : null;
    }
}
