namespace Explain;

/// <summary>
/// A statement by example: its words stand for themselves and its capitals for any objects of their kind, so that
/// "F is the foot of the perpendicular from T to PQ" both reads and prints. A, B, … is a list of at least two.
/// </summary>
internal sealed class Pattern
{
    private readonly Items<PatternPart> parts;
    private readonly string tail;
    private readonly string? rarest;

    private Pattern(string text)
    {
        (parts, tail) = PatternText.Parts(text);
        Text = text;
        Tokens = [.. Explain.Tokens.Read(text)!];
        Slots = [.. parts.Where(p => p.Literal is null)];
        rarest = parts.Select(p => p.Literal).MaxBy(l => l?.Length ?? 0);
    }

    /// <summary>The example.</summary>
    public string Text { get; }

    /// <summary>The tokens of the example.</summary>
    public Items<TextToken> Tokens { get; }

    public Items<PatternPart> Slots { get; }

    /// <summary>The patterns of a text that may hold choices.</summary>
    public static IEnumerable<Pattern> Of(string text) => PatternText.Expand(text).Select(t => new Pattern(t));

    /// <summary>Reads the pattern where it begins at a token; null where it does not stand there.</summary>
    public Matching? Match(ReadOnlySpan<TextToken> tokens, int at)
    {
        if (!MayStand(tokens)) return null;
        List<Items<Named>> slots = [];
        foreach (PatternPart part in parts)
        {
            if (part.Literal is { } literal)
            {
                if (at >= tokens.Length || !tokens[at++].Is(literal)) return null;
            }
            else if (SlotReader.Read(part, tokens, ref at) is { } read) slots.Add(read);
            else return null;
        }

        return new([.. slots], at);
    }

    /// <summary>The objects of each slot when the pattern can say these; null when it cannot.</summary>
    public Items<Items<Named>>? Share(Items<Named> of)
    {
        List<Items<Named>> shared = [];
        int spare = of.Count - Slots.Count(s => !s.IsList), next = 0;
        foreach (PatternPart slot in Slots)
        {
            int count = slot.IsList ? spare : 1;
            if (count < int.Max(1, slot.Least) || next + count > of.Count) return null;
            Named[] taken = [.. of.Skip(next).Take(count)];
            if (!taken.All(slot.Takes)) return null;
            shared.Add([.. taken]);
            next += count;
        }

        return next == of.Count ? [.. shared] : null;
    }

    /// <summary>The pattern with these objects, as words and names.</summary>
    public Items<StatementPiece> Write(Items<Items<Named>> slots, English english)
    {
        List<StatementPiece> pieces = [];
        for (int i = 0; i < slots.Count; i++)
        {
            Words(pieces, Slots[i].Before);
            for (int n = 0; n < slots[i].Count; n++)
            {
                if (n > 0) Words(pieces, n < slots[i].Count - 1 ? ", " : LastComma(slots[i].Count, english) + " and ");
                pieces.Add(StatementPiece.Name(slots[i][n], english));
            }
        }

        Words(pieces, tail);
        return [.. pieces];
    }

    /// <summary>Most patterns are passed over by their longest word.</summary>
    private bool MayStand(ReadOnlySpan<TextToken> tokens)
    {
        if (rarest is null) return true;
        foreach (TextToken token in tokens)
            if (token.Is(rarest)) return true;
        return false;
    }

    private static string LastComma(int count, English english) => english == English.UnitedStates && count > 2 ? "," : "";

    private static void Words(List<StatementPiece> pieces, string words)
    {
        if (words.Length > 0) pieces.Add(new(words, null, null));
    }
}
