namespace Explain;

/// <summary>A piece of a wording: words, a placeholder, or a choice by a count.</summary>
internal abstract record WordingPiece
{
    /// <summary>The argument that it places; null for words.</summary>
    public virtual string? Places => null;

    /// <summary>The pieces of a text, in order; null where its braces are wrong. <c>{{</c> and <c>}}</c> stand for braces.</summary>
    public static IReadOnlyList<WordingPiece>? Parse(string text)
    {
        List<WordingPiece> pieces = [];
        string words = "";
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] is not ('{' or '}')) words += text[i];
            else if (i + 1 < text.Length && text[i + 1] == text[i]) words += text[i++];
            else
            {
                int end = text.IndexOf('}', i);
                if (end <= i || Slot(text.Substring(i + 1, end - i - 1)) is not { } slot) return null;
                if (words.Length > 0) pieces.Add(new WordingWords(words));
                pieces.Add(slot);
                words = "";
                i = end;
            }
        }

        if (words.Length > 0) pieces.Add(new WordingWords(words));
        return pieces;
    }

    private static WordingPiece? Slot(string inside)
    {
        string[] parts = inside.Split('|');
        if (parts[0].Length == 0 || !parts[0].All(IsOfName)) return null;
        if (parts.Length == 1) return new WordingSlot(parts[0]);
        if (parts.Length == 2) return WordingSlot.Knows(parts[1]) ? new WordingSlot(parts[0], parts[1]) : null;
        return parts.Length == 3 && After("one=", parts[1]) is { } one && After("other=", parts[2]) is { } other ? new WordingChoice(parts[0], one, other) : null;
    }

    private static bool IsOfName(char c) => c is (>= 'a' and <= 'z') or (>= 'A' and <= 'Z') or (>= '0' and <= '9');

    private static string? After(string start, string part) => part.StartsWith(start, StringComparison.Ordinal) ? part.Substring(start.Length) : null;
}
