namespace Explain;

/// <summary>Finds the statement, the quantity or the goal that an unreadable text comes nearest to.</summary>
internal static class NearestStatement
{
    private const int Whole = 12, MostCompared = 24;

    private static readonly Items<Pattern> Statements =
    [
        .. StatementTable.Rows.Select(r => r.Row.In(English.UnitedKingdom)), .. Pattern.Of("BA = BC"), .. Pattern.Of("angle ABC = angle DEF"),
    ];

    private static readonly Items<Pattern> Quantities = [.. QuantityTable.Rows.Select(r => r.Row.In(English.UnitedKingdom))];

    /// <summary>What is wrong with a text that is no statement.</summary>
    public static Fault Fault(string text) =>
        new(ErrorCodes.UnreadableStatement, StatementPhrases.NotAStatement(text), Remedy(text, Statements, StatementPhrases.StatementsAre()));

    /// <summary>What is wrong with a text that is no quantity.</summary>
    public static Fault QuantityFault(string text) =>
        new(ErrorCodes.UnreadableStatement, StatementPhrases.NotAQuantity(text), Remedy(text, Quantities, StatementPhrases.QuantitiesAre(Texts(Quantities))));

    /// <summary>The nearest of some patterns, with the names of the text where they fit; other words where none has anything of the text.</summary>
    public static Phrase Remedy(string text, IEnumerable<Pattern> patterns, Phrase otherwise)
    {
        TextToken[] tokens = [.. (Tokens.Read(text) ?? []).Take(MostCompared)];
        Pattern nearest = Nearest(tokens, patterns);
        return tokens.Any(t => nearest.Tokens.Any(n => IsLike(t, n))) ? StatementPhrases.NearestIs(WithNames(nearest, tokens) ?? nearest.Text) : otherwise;
    }

    /// <summary>The examples of some patterns, one after another.</summary>
    public static string Texts(IEnumerable<Pattern> patterns) => string.Join(", ", patterns.Select(p => p.Text));

    /// <summary>The same sign, names of as many points, or words of nearly the same letters.</summary>
    private static bool IsLike(TextToken one, TextToken other) => one.Kind == other.Kind && one.Kind switch
    {
        TokenKind.Name => int.Min(one.Text.Length, 3) == int.Min(other.Text.Length, 3),
        TokenKind.Word => one.Text.Length > 3 && Spelling.Nearest(one.Text, [other.Text]) is not null,
        _ => one.Text == other.Text,
    };

    private static Pattern Nearest(TextToken[] tokens, IEnumerable<Pattern> patterns)
    {
        Pattern? nearest = null;
        int least = int.MaxValue;
        foreach (Pattern pattern in patterns)
        {
            if (int.Abs(pattern.Tokens.Count - tokens.Length) * Whole >= least || Distance(tokens, pattern.Tokens.AsSpan()) is var away && away >= least) continue;
            (nearest, least) = (pattern, away);
        }

        return nearest!;
    }

    private static int Distance(ReadOnlySpan<TextToken> from, ReadOnlySpan<TextToken> to)
    {
        int[] row = new int[to.Length + 1];
        for (int j = 1; j <= to.Length; j++) row[j] = j * Whole;
        for (int i = 1; i <= from.Length; i++)
        {
            int corner = row[0];
            row[0] = i * Whole;
            for (int j = 1; j <= to.Length; j++)
            {
                int exchanged = corner + Exchange(from[i - 1], to[j - 1]);
                corner = row[j];
                row[j] = int.Min(exchanged, int.Min(row[j], row[j - 1]) + Whole);
            }
        }

        return row[to.Length];
    }

    private static int Exchange(TextToken from, TextToken to)
    {
        if (from.Kind != to.Kind) return 2 * Whole;
        if (from.Text == to.Text) return 0;
        return from.Kind switch
        {
            TokenKind.Name => int.Min(from.Text.Length, 3) == int.Min(to.Text.Length, 3) ? 1 : Whole / 2,
            TokenKind.Word => OfWords(from.Text, to.Text),
            _ => 2 * Whole,
        };
    }

    /// <summary>Words of very different length are different words.</summary>
    private static int OfWords(string from, string to)
    {
        int longer = int.Max(from.Length, to.Length);
        return 2 * int.Min(from.Length, to.Length) < longer ? 2 * Whole : Whole * Spelling.Distance(from, to) / longer * 2;
    }

    private static string? WithNames(Pattern pattern, TextToken[] tokens)
    {
        List<Items<Point>> names = [.. tokens.Where(t => t.Kind == TokenKind.Name).Select(t => PointNames.Distinct(t.Text)).OfType<Items<Point>>()];
        List<Named> taken = [];
        foreach (PatternPart slot in pattern.Slots)
        {
            int at = names.FindIndex(n => slot.Make(n) is not null);
            if (at < 0) return null;
            taken.Add(slot.Make(names[at])!);
            names.RemoveAt(at);
        }

        return pattern.Share([.. taken]) is { } shared ? string.Concat(pattern.Write(shared, English.UnitedKingdom).Select(p => p.Words)) : null;
    }
}
