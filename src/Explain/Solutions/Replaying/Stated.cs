namespace Explain;

/// <summary>A quantity and the value that a premise states of it.</summary>
internal sealed record Stated(Symbol Of, Expr Is)
{
    /// <summary>Null where the premise states no value.</summary>
    public static Stated? By(Premise premise) => premise.Says switch
    {
        Compare { Between: [Relation.Equal], Terms: [SymbolUse use, var value] } => new(use.Symbol, value),
        Place { Kind: PlaceKind.RightAngle, Of: [Corner c] } => new(new Angle(c.First, c.Vertex, c.Second), Expr.Degrees(90)),
        _ => null,
    };
}
