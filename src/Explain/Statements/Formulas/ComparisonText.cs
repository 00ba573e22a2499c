namespace Explain;

/// <summary>Writes equalities and inequalities. In the United States equal angles and equal sides are congruent.</summary>
internal static class ComparisonText
{
    public static Items<StatementPiece> Pieces(Compare compare, English english)
    {
        string? before = Congruent(compare, english);
        List<StatementPiece> pieces = [];
        for (int i = 0; i < compare.Terms.Count; i++)
        {
            if (i > 0) pieces.Add(new(before is null ? $" {Relations.Sign(compare.Between[i - 1])} " : " ≅ ", null, null));
            pieces.Add(before is null ? Formula(compare.Terms[i], english) : Object(pieces, before, compare.Terms[i], english));
        }

        return [.. pieces];
    }

    /// <summary>What stands before each name when all terms are equal sides or equal angles in US English; null otherwise.</summary>
    private static string? Congruent(Compare compare, English english) =>
        english != English.UnitedStates || compare.Between.Any(b => b != Relation.Equal) ? null
        : compare.Terms.All(t => t is SymbolUse { Symbol: Length }) ? "segment "
        : compare.Terms.All(t => t is SymbolUse { Symbol: Angle { Reflex: false } }) ? "" : null;

    private static StatementPiece Formula(Expr term, English english) => new(FormulaText.Write(term, english), null, term);

    private static StatementPiece Object(List<StatementPiece> pieces, string before, Expr term, English english)
    {
        if (before.Length > 0) pieces.Add(new(before, null, null));
        return StatementPiece.Name(((SymbolUse)term).Symbol switch
        {
            Length l => new Line(l.From, l.To),
            Angle a => new Corner(a.First, a.Vertex, a.Second),
            var other => throw new ArgumentException(other.GetType().Name, nameof(term)),
        }, english);
    }
}
