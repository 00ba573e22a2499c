namespace Explain;

/// <summary>
/// What formulas are asked. Formulas put into formulas share subtrees, so each shared subtree is visited once.
/// </summary>
internal static class ExprQueries
{
    /// <summary>The formula and all below it, parts before wholes; a shared subtree comes once.</summary>
    public static IEnumerable<Expr> Subtrees(this Expr expr)
    {
        HashSet<Expr> seen = new(ReferenceEqualityComparer.Instance);
        Stack<(Expr Of, bool PartsDone)> open = new([(expr, false)]);
        while (open.TryPop(out var next))
        {
            if (next.PartsDone)
            {
                yield return next.Of;
            }
            else if (seen.Add(next.Of))
            {
                open.Push((next.Of, true));
                foreach (Expr part in Parts.Of(next.Of).Reverse()) open.Push((part, false));
            }
        }
    }

    /// <summary>The symbols in the order in which they come first.</summary>
    public static Items<Symbol> Symbols(this Expr expr) => [.. expr.Subtrees().OfType<SymbolUse>().Select(s => s.Symbol).Distinct()];

    /// <summary>The claims whose values are used, in the order in which they come first.</summary>
    public static Items<ClaimId> Claims(this Expr expr) => [.. expr.Subtrees().OfType<ValueOf>().Select(v => v.Claim).Distinct()];

    /// <summary>How often a subtree stands in the formula; inside itself it is not counted again.</summary>
    public static int Count(this Expr expr, Expr target) =>
        expr.Equals(target) ? 1 : Parts.Of(expr).Sum(part => part.Count(target));

    public static bool Holds(this Expr expr, Expr target) => expr.Subtrees().Any(target.Equals);

    /// <summary>Puts other formulas for subtrees, from the top; what is put in is not searched again. Null keeps a subtree.</summary>
    public static Expr Substitute(this Expr expr, Func<Expr, Expr?> by)
    {
        Dictionary<Expr, Expr> done = new(ReferenceEqualityComparer.Instance);
        return Visit(expr);

        Expr Visit(Expr node) => done.TryGetValue(node, out Expr? known) ? known : done[node] = by(node) ?? Rebuilt(node);

        Expr Rebuilt(Expr node)
        {
            Items<Expr> parts = Parts.Of(node), others = [.. parts.Select(Visit)];
            return Parts.Same(parts, others) ? node : Parts.With(node, others);
        }
    }

    public static Expr Replace(this Expr expr, Symbol symbol, Expr by) =>
        expr.Substitute(node => node is SymbolUse use && use.Symbol.Equals(symbol) ? by : null);
}
