namespace Explain;

/// <summary>Takes a pattern apart: (words) may be left out, [one|other] is a choice.</summary>
internal static class PatternText
{
    /// <summary>The patterns that a text with choices stands for.</summary>
    public static IEnumerable<string> Expand(string text)
    {
        int open = text.IndexOfAny(['(', '[']);
        if (open < 0) return [text];
        int close = text.IndexOf(text[open] == '(' ? ')' : ']', open);
        string[] choices = text[open] == '(' ? [text[(open + 1)..close], ""] : text[(open + 1)..close].Split('|');
        return choices.SelectMany(choice => Expand(text[..open] + choice + text[(close + 1)..]));
    }

    /// <summary>The parts of a pattern without choices, and what is printed after its last slot.</summary>
    public static (Items<PatternPart> Parts, string Tail) Parts(string text)
    {
        TextToken[] tokens = Tokens.Read(text)!;
        List<PatternPart> parts = [];
        int printed = 0;
        for (int i = 0; i < tokens.Length; i++)
        {
            if (tokens[i].Kind != TokenKind.Name)
            {
                if (!BeginsCorner(tokens, i)) parts.Add(PatternPart.Word(tokens[i].Text));
                continue;
            }

            int last = LastOfList(tokens, i), corner = i > 0 && BeginsCorner(tokens, i - 1) ? 1 : 0;
            string before = text[printed..tokens[i - corner].Start];
            parts.Add(Slot(tokens, i, before, last > i ? (last - i) / 2 : 0));
            printed = tokens[last].End;
            i = last;
        }

        return (Items(parts), text[printed..]);
    }

    private static Items<PatternPart> Items(List<PatternPart> parts) => [.. parts];

    private static PatternPart Slot(TextToken[] tokens, int at, string before, int least)
    {
        string name = tokens[at].Text;
        bool any = name.Contains('…');
        SlotKind kind = at > 0 && BeginsCorner(tokens, at - 1) ? SlotKind.Corner
            : at > 0 && tokens[at - 1].Text is "centre" or "center" ? SlotKind.Circle
            : any || name.Length > 2 ? SlotKind.Polygon
            : name.Length == 2 ? SlotKind.Line : SlotKind.Point;
        return new(null, before, name, kind, any || kind != SlotKind.Polygon ? 0 : name.Length, least);
    }

    private static bool BeginsCorner(TextToken[] tokens, int at) =>
        tokens[at].Text is "angle" or "∠" && at + 1 < tokens.Length && tokens[at + 1].Text.Length == 3 && tokens[at + 1].Kind == TokenKind.Name;

    /// <summary>Where a list such as A, B, … ends: at its dots; the slot itself where there is no list.</summary>
    private static int LastOfList(TextToken[] tokens, int at)
    {
        int end = at;
        while (end + 2 < tokens.Length && tokens[end + 1].Is(",") && tokens[end + 2].Kind == TokenKind.Name) end += 2;
        return end + 2 < tokens.Length && tokens[end + 1].Is(",") && tokens[end + 2].Is("…") ? end + 2 : at;
    }
}
