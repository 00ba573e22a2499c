namespace Explain;

/// <summary>Breaks a formula that is too long for a line: first between two formulas, then at its equals signs.</summary>
internal static class LatexLines
{
    /// <summary>Average characters of a display that fit in 110 mm, the narrowest column provided for.</summary>
    private const double LineWidth = 50;

    private const string Quad = @"\quad";

    public static IEnumerable<string> Break(MathPiece line) => MathWidth.Of(line) <= LineWidth || line is not MathRow { Level: MathLevel.Relation } row
        ? [MathTex.Write(line)]
        : Split(row, p => p is MathJoin).Select(Aligned).Select(l => l.StartsWith(Quad, StringComparison.Ordinal) ? l[Quad.Length..] : l);

    /// <summary>The first relation stays beside the left side; the others stand below it.</summary>
    private static string Aligned(MathRow row)
    {
        MathRow[] terms = [.. Split(row, p => p is MathSign { Sign: "=" })];
        if (MathWidth.Of(row) <= LineWidth || terms.Length < 3) return MathTex.Write(row);
        return "\\begin{aligned}\n    " + MathTex.Write(terms[0]) + "&" + string.Join("\\\\[0.6ex]\n    &", terms.Skip(1).Select(MathTex.Write)) + "\n  \\end{aligned}";
    }

    private static IEnumerable<MathRow> Split(MathRow row, Func<MathPiece, bool> before)
    {
        List<MathPiece> taken = [];
        foreach (MathPiece piece in row.Of)
        {
            if (before(piece) && taken.Count > 0)
            {
                yield return new([.. taken], MathLevel.Relation);
                taken.Clear();
            }

            taken.Add(piece);
        }

        yield return new([.. taken], MathLevel.Relation);
    }
}
