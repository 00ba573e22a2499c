namespace Explain;

/// <summary>Whether the measurements of a triangle can hold together as far as lengths alone or angles alone tell.</summary>
internal sealed class Feasible(Ledger ledger)
{
    public bool Holds(Polygon triangle)
    {
        Symbol[] sides = [.. TriangleParts.Sides(triangle).Where(ledger.Knows)], angles = [.. TriangleParts.Angles(triangle).Where(ledger.Knows)];
        if (sides.Length == 3 && !sides.All(s => ledger.Compare(s, Sum(sides.Where(o => o != s))) < 0)) return false;
        if (SwingingSide.Of(triangle, ledger) is { } swinging && !swinging.Reaches(ledger)) return false;
        return angles.Length < 2 || ledger.Compare(Sum(angles), Expr.Degrees(180)) is { } sign && (angles.Length == 3 ? sign == 0 : sign < 0);
    }

    private static Expr Sum(IEnumerable<Symbol> symbols) => symbols.Select(s => (Expr)s).Aggregate((a, b) => a + b);
}
