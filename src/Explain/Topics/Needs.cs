namespace Explain;

/// <summary>
/// Writes down at each premise what the measurements must satisfy for it to be true, so that other measurements can be held
/// against it without solving afresh.
/// </summary>
internal sealed class Needs(Ledger ledger, Consistency consistency)
{
    private static readonly Expr Right = Expr.Degrees(90);

    /// <summary>The premises with their needs; those of the triangle stand at the premise that states it.</summary>
    public Items<Premise> Of(Items<Premise> premises, Polygon triangle, Items<Compare> ofTriangle)
    {
        ClaimId stated = ledger.ClaimOf(new Place(PlaceKind.Triangle, [triangle]))!.Value;
        return [.. premises.Select(p => p with { Needs = [.. (p.Id == stated ? [.. ofTriangle] : Of(p)).Select(WithClaims)] })];
    }

    private IEnumerable<Compare> Of(Premise premise) => premise.Says switch
    {
        Place { Kind: PlaceKind.Acute, Of: [Corner c] } => Angle(c, Relation.Less),
        Place { Kind: PlaceKind.Obtuse, Of: [Corner c] } => Angle(c, Relation.Greater),
        Place { Kind: PlaceKind.RightAngle, Of: [Corner c] } => Angle(c, Relation.Equal),
        Compare { Between: [Relation.Equal], Terms: [SymbolUse { Symbol: Length or Explain.Angle } of, Quantity] } when consistency.Formula(of.Symbol) is { } formula =>
            [Compare.Equal(new ValueOf(premise.Id), formula)],
        _ => [],
    };

    /// <summary>How an angle compares with a right angle, where it is given or follows from what is given.</summary>
    private IEnumerable<Compare> Angle(Corner corner, Relation relation)
    {
        Angle angle = new(corner.First, corner.Vertex, corner.Second);
        Expr? size = ledger.Knows(angle) && ledger.ClaimOf(angle).IsGiven ? angle : consistency.Formula(angle);
        return size is null ? [] : [Compare.Of(size, relation, Right)];
    }

    /// <summary>Every quantity is one of the measurements, so it stands for the claim that gives it.</summary>
    private Compare WithClaims(Compare need) => need with { Terms = [.. need.Terms.Select(ledger.WithValues)] };
}
