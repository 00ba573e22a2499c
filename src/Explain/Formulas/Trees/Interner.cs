namespace Explain;

/// <summary>Keeps one object of each formula, so that equal subtrees are the same object and are worked out once.</summary>
internal sealed class Interner
{
    private readonly HashSet<Expr> known = new(new Shallow());

    /// <summary>The kept twin of a formula whose parts are kept already.</summary>
    public Expr Keep(Expr expr)
    {
        if (known.TryGetValue(expr, out Expr? twin)) return twin;
        known.Add(expr);
        return expr;
    }

    /// <summary>The kept twin of any formula.</summary>
    public Expr KeepAll(Expr expr)
    {
        Dictionary<Expr, Expr> twins = new(ReferenceEqualityComparer.Instance);
        foreach (Expr node in expr.Subtrees())
        {
            Items<Expr> parts = Parts.Of(node), kept = [.. parts.Select(p => twins[p])];
            twins[node] = Keep(Parts.Same(parts, kept) ? node : Parts.With(node, kept));
        }

        return twins[expr];
    }

    /// <summary>Compares one level only: parts are the same when they are the same object.</summary>
    private sealed class Shallow : IEqualityComparer<Expr>
    {
        public bool Equals(Expr? x, Expr? y) => ReferenceEquals(x, y)
            || (x is not null && y is not null && Same(x, y) && Parts.Same(Parts.Of(x), Parts.Of(y)));

        public int GetHashCode(Expr expr)
        {
            if (Parts.Of(expr) is not { Count: > 0 } parts) return expr.GetHashCode();
            HashCode hash = default;
            hash.Add(expr.GetType());
            foreach (Expr part in parts) hash.Add(ReferenceEqualityComparer.Instance.GetHashCode(part));
            return hash.ToHashCode();
        }

        private static bool Same(Expr x, Expr y) => (x, y) switch
        {
            (Power a, Power b) => a.Exponent == b.Exponent,
            (Apply a, Apply b) => a.Function == b.Function,
            _ => Parts.Of(x).Count > 0 ? x.GetType() == y.GetType() : x.Equals(y),
        };
    }
}
