namespace Explain;

/// <summary>Whether the measurements of a triangle can hold together as far as lengths alone or angles alone tell.</summary>
internal sealed class Feasible(Ledger ledger)
{
    public bool Holds(Polygon triangle)
    {
        Symbol[] sides = [.. TriangleParts.Sides(triangle).Where(ledger.Knows)], angles = [.. TriangleParts.Angles(triangle).Where(ledger.Knows)];
        if (sides.Length == 3 && !sides.All(s => ledger.Compare(s, Sum(sides.Where(o => o != s))) < 0)) return false;
        if (angles is [Angle only] && sides.Length == 2 && !Reaches(only, sides)) return false;
        return angles.Length < 2 || ledger.Compare(Sum(angles), Expr.Degrees(180)) is { } sign && (angles.Length == 3 ? sign == 0 : sign < 0);
    }

    /// <summary>Whether the side opposite the angle, where it is given, is long enough to close the triangle.</summary>
    private bool Reaches(Angle angle, Symbol[] sides)
    {
        if (sides.FirstOrDefault(s => s is Length l && l.From != angle.Vertex && l.To != angle.Vertex) is not { } opposite) return true;
        Symbol beside = sides.First(s => s != opposite);
        bool acute = ledger.Compare(angle, Expr.Degrees(90)) < 0;
        return acute ? ledger.Compare(opposite, new Product(beside, new Apply(Function.Sine, angle))) >= 0 : ledger.Compare(opposite, beside) > 0;
    }

    private static Expr Sum(IEnumerable<Symbol> symbols) => symbols.Select(s => (Expr)s).Aggregate((a, b) => a + b);
}
