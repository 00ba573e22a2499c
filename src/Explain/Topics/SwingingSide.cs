namespace Explain;

/// <summary>Two known sides and one known angle that is not between them: the side opposite the angle swings about its upper end.</summary>
/// <param name="Angle">The angle.</param>
/// <param name="Opposite">The side opposite it.</param>
/// <param name="Beside">The other side.</param>
internal sealed record SwingingSide(Angle Angle, Length Opposite, Length Beside)
{
    /// <summary>The corner of the given angle.</summary>
    public Point Start => Angle.Vertex;

    /// <summary>The corner about which the side swings.</summary>
    public Point Top => Other(Beside, Start);

    /// <summary>The corner that the swinging side carries with it.</summary>
    public Point Moving => Other(Opposite, Top);

    /// <summary>The other arm of the angle, on which the moving corner must lie.</summary>
    public Line Line => new(Start, Moving);

    /// <summary>The distance from the upper end to the other arm of the angle, where the angle is acute.</summary>
    public Expr Height => new Product(Beside, new Apply(Function.Sine, Angle));

    /// <summary>The data of a triangle as known; null where they are of another kind.</summary>
    public static SwingingSide? Of(Polygon triangle, Ledger ledger)
    {
        Angle[] angles = [.. TriangleParts.Angles(triangle).Where(ledger.Knows)];
        Length[] sides = [.. TriangleParts.Sides(triangle).Where(ledger.Knows)];
        if (angles is not [var angle] || sides.Length != 2) return null;
        return sides.FirstOrDefault(s => s.From != angle.Vertex && s.To != angle.Vertex) is { } opposite
            ? new((Angle)Spelled(angle), (Length)Spelled(opposite), (Length)Spelled(sides.First(s => s != opposite))) : null;

        Symbol Spelled(Symbol symbol) => ledger.Arrangement.Canonical(symbol);
    }

    public bool IsAcute(Ledger ledger) => ledger.Compare(Angle, Expr.Degrees(90)) < 0;

    /// <summary>Whether the count depends on the height: the angle is acute and the side opposite is the shorter one.</summary>
    public bool NeedsHeight(Ledger ledger) => IsAcute(ledger) && ledger.Compare(Opposite, Beside) < 0;

    /// <summary>Whether the angle is a right angle, so that the side opposite is the hypotenuse and the rest follows.</summary>
    public bool IsRight(Ledger ledger) => ledger.Compare(Angle, Expr.Degrees(90)) == 0;

    /// <summary>That the side opposite is long enough to close the triangle.</summary>
    public Compare Reach(Ledger ledger) => IsAcute(ledger) ? Compare.Of(Opposite, Relation.GreaterOrEqual, Height) : Compare.Of(Opposite, Relation.Greater, Beside);

    private static Point Other(Length side, Point end) => side.From == end ? side.To : side.From;
}
