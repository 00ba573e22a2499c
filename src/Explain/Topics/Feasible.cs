namespace Explain;

/// <summary>What the measurements of a triangle must satisfy together, as far as lengths alone or angles alone tell.</summary>
internal sealed class Feasible(Ledger ledger)
{
    private static readonly Expr Straight = Expr.Degrees(180);

    public Items<Compare> Needs(Polygon triangle)
    {
        Symbol[] sides = [.. TriangleParts.Sides(triangle).Where(IsNumber)], angles = [.. TriangleParts.Angles(triangle).Where(IsNumber)];
        List<Compare> needs = sides.Length < 3 ? [] : [.. Shorter(sides)];
        if (sides.Length == 2 && angles.Length == 1 && SwingingSide.Of(triangle, ledger) is { } swinging) needs.Add(swinging.Reach(ledger));
        if (angles.Length > 1) needs.Add(Compare.Of(Sum(angles), angles.Length == 3 ? Relation.Equal : Relation.Less, Straight));
        return [.. needs];
    }

    /// <summary>Whether nothing speaks against the triangle. What cannot be decided may hold.</summary>
    public bool Holds(Polygon triangle) => Needs(triangle).All(n => Decide.Holds(n, ledger.Compare) != false);

    /// <summary>Whether one of three lengths is not shorter than the other two together.</summary>
    public static bool CannotBeSides(IReadOnlyList<Symbol> sides, Ledger ledger) => Shorter(sides).Any(n => Decide.Holds(n, ledger.Compare) == false);

    /// <summary>Whether three quantities are lengths that make a triangle, as far as they are known. What cannot be decided may be.</summary>
    public static bool AreSides(IReadOnlyList<Symbol> sides, Ledger ledger) => sides.Where(ledger.Knows).All(s => ledger.Evaluate(s) is { True.High.IsPositive: true })
        && !(sides.Count == 3 && sides.All(ledger.Knows) && CannotBeSides(sides, ledger));

    private static IEnumerable<Compare> Shorter(IReadOnlyList<Symbol> sides) => sides.Select(s => Compare.Of(s, Relation.Less, Sum(sides.Where(o => o != s))));

    private bool IsNumber(Symbol symbol) => ledger.Knows(symbol) && ledger.Closing.Close(ledger.ValueOf(symbol)) is Quantity;

    private static Expr Sum(IEnumerable<Symbol> symbols) => symbols.Select(s => (Expr)s).Aggregate((a, b) => a + b);
}
