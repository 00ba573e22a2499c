namespace Explain;

/// <summary>A row of the statement table: how things lie, or that two shapes are alike.</summary>
/// <param name="Place">How things lie; null when the row says that two shapes are alike.</param>
/// <param name="Congruent">Of shapes that are alike, whether they are congruent.</param>
/// <param name="Row">Its words.</param>
internal sealed record StatementRow(PlaceKind? Place, bool Congruent, GrammarRow Row)
{
    /// <summary>The statement of these objects; null when they do not go together.</summary>
    public Statement? Make(Items<Named> of) => Place is { } kind ? new Place(kind, of)
        : of[0] is Polygon first && of[1] is Polygon second && first.Corners.Count == second.Corners.Count ? new Alike(Congruent, first, second) : null;

    /// <summary>The objects of a statement that this row may say; null when it is not of this kind.</summary>
    public Items<Named>? Take(Statement statement) => statement switch
    {
        Place p when p.Kind == Place => p.Of,
        Alike a when Place is null && a.Congruent == Congruent => [a.First, a.Second],
        _ => null,
    };
}
