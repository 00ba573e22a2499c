namespace Explain;

/// <summary>Reads what fills a slot of a pattern.</summary>
internal static class SlotReader
{
    /// <summary>The objects, and on past them; null when the tokens here do not fill the slot.</summary>
    public static Items<Named>? Read(PatternPart slot, ReadOnlySpan<TextToken> tokens, ref int at)
    {
        if (One(slot, tokens, ref at) is not { } first) return null;
        List<Named> read = [first];
        while (slot.IsList)
        {
            int next = Separator(tokens, at);
            if (next == at || One(slot, tokens, ref next) is not { } more) break;
            read.Add(more);
            at = next;
        }

        return read.Count >= slot.Least && read.Distinct().Count() == read.Count ? [.. read] : null;
    }

    private static Named? One(PatternPart slot, ReadOnlySpan<TextToken> tokens, ref int at)
    {
        if (slot.Kind == SlotKind.Corner) at = AngleWord(tokens, at);
        if (at < 0 || at >= tokens.Length || tokens[at].Kind != TokenKind.Name) return null;
        return PointNames.Distinct(tokens[at++].Text) is { } points ? slot.Make(points) : null;
    }

    /// <summary>The place after angle, the angle, ∠ or m∠; less than 0 where none of them stands.</summary>
    public static int AngleWord(ReadOnlySpan<TextToken> tokens, int at)
    {
        if (at < tokens.Length && (tokens[at].Is("the") || (tokens[at].Is("m") && at + 1 < tokens.Length && tokens[at + 1].Is("∠")))) at++;
        return at < tokens.Length && (tokens[at].Is("angle") || tokens[at].Is("∠")) ? at + 1 : -1;
    }

    private static int Separator(ReadOnlySpan<TextToken> tokens, int at)
    {
        if (at < tokens.Length && tokens[at].Is(",")) at++;
        return at < tokens.Length && tokens[at].Is("and") ? at + 1 : at;
    }
}
