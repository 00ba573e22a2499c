namespace Explain;

/// <summary>Whether the measurements of a triangle can hold together as far as lengths alone or angles alone tell. What cannot be decided may hold.</summary>
internal sealed class Feasible(Ledger ledger)
{
    public bool Holds(Polygon triangle)
    {
        Symbol[] sides = [.. TriangleParts.Sides(triangle).Where(IsNumber)], angles = [.. TriangleParts.Angles(triangle).Where(IsNumber)];
        if (sides.Length == 3 && sides.Any(s => ledger.Compare(s, Sum(sides.Where(o => o != s))) >= 0)) return false;
        if (SwingingSide.Of(triangle, ledger) is { } swinging && sides.Length == 2 && angles.Length == 1 && !swinging.Reaches(ledger)) return false;
        return angles.Length < 2 || ledger.Compare(Sum(angles), Expr.Degrees(180)) is not { } sign || (angles.Length == 3 ? sign == 0 : sign < 0);
    }

    private bool IsNumber(Symbol symbol) => ledger.Knows(symbol) && ledger.Closing.Close(ledger.ValueOf(symbol)) is Quantity;

    private static Expr Sum(IEnumerable<Symbol> symbols) => symbols.Select(s => (Expr)s).Aggregate((a, b) => a + b);
}
