namespace Explain;

/// <summary>Reads equalities and inequalities: BA = BC, angle ABC = angle PAB = (2x + 16)°, 3 + 6 &lt; 9.5.</summary>
internal static class ComparisonReader
{
    /// <summary>Null when the tokens are no comparison.</summary>
    public static Compare? Read(ReadOnlySpan<TextToken> tokens)
    {
        List<Expr> terms = [];
        List<Relation> between = [];
        bool congruent = false;
        for (int at = 0; ; at++)
        {
            int end = at;
            while (end < tokens.Length && Relations.Of(tokens[end]) is null) end++;
            if (TermReader.Read(tokens[at..end]) is not { } term) return null;
            terms.Add(term);
            if (end == tokens.Length) break;
            congruent |= tokens[end].Text == "≅";
            between.Add(Relations.Of(tokens[end])!.Value);
            at = end;
        }

        if (terms.Count < 2 || (congruent && !terms.All(t => t is SymbolUse { Symbol: Length or Angle }))) return null;
        return new([.. HasMeasure(tokens) ? terms.Select(InDegrees) : terms], [.. between]);
    }

    /// <summary>m∠ is a number of degrees, so that m∠ABC = 52 needs no unit.</summary>
    private static bool HasMeasure(ReadOnlySpan<TextToken> tokens)
    {
        for (int i = 1; i < tokens.Length; i++)
            if (tokens[i].Is("∠") && tokens[i - 1].Is("m")) return true;
        return false;
    }

    private static Expr InDegrees(Expr term) => term is Quantity { Unit: var unit } q && unit == Unit.None ? new Quantity(q.Amount, Unit.Degree) : term;
}
