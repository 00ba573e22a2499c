namespace Explain;

/// <summary>Encloses formulas without units over one box: all values that they take there are inside.</summary>
internal sealed class OverBox(IEnumerable<BoxSide> box)
{
    /// <summary>Binary places: enough to find the place of an extreme so well that the ladder's first precision is kept for its value.</summary>
    public const int Bits = 256;

    private readonly Dictionary<Symbol, Enclosure> sides = box.ToDictionary(s => s.Of, s => Enclosure.Between(s.Low, s.High, Bits));
    private readonly Dictionary<Expr, Enclosure?> done = new(ReferenceEqualityComparer.Instance);

    /// <summary>The innermost part that may have no value somewhere in the box; null while there was none.</summary>
    public Expr? Fault { get; private set; }

    /// <summary>Null when the formula may have no value somewhere in the box.</summary>
    public Enclosure? Of(Expr expr) => done.TryGetValue(expr, out Enclosure? known) ? known : done[expr] = Make(expr);

    private Enclosure? Make(Expr expr)
    {
        if (expr is SymbolUse(var symbol)) return sides[symbol];
        if (expr is Quantity(var amount, _)) return amount.Enclose(Bits);
        Items<Expr> parts = Parts.Of(expr);
        Enclosure[] values = new Enclosure[parts.Count];
        for (int i = 0; i < parts.Count; i++)
        {
            if (Of(parts[i]) is not { } value) return null;
            values[i] = value;
        }

        Enclosure? result = Enclosing.Of(expr, values);
        if (result is null) Fault ??= expr;
        return result;
    }
}
