namespace Explain;

/// <summary>Finds characters that no problem file may hold: control characters, halves of pairs, tabs that indent.</summary>
internal static class TextCheck
{
    /// <summary>What is wrong with the text of a file; null when nothing is.</summary>
    public static ProblemError? Of(string text, bool isJson)
    {
        bool indent = true;
        (int line, int column) = (1, 0);
        for (int i = 0; i < text.Length; i++)
        {
            char sign = text[i];
            column++;
            if (sign == '\t' && indent && !isJson && HasMore(text, i)) return Error(ReadingPhrases.TabIndents(), ReadingPhrases.IndentWithSpaces(), line, column);
            if (IsControl(text, i)) return Error(ReadingPhrases.ControlCharacter(), ReadingPhrases.DeleteIt(), line, column);
            if (char.IsHighSurrogate(sign)) i++;
            if (sign == '\n') (line, column, indent) = (line + 1, 0, true);
            else indent &= sign is ' ' or '\t';
        }

        return null;
    }

    /// <summary>Whether anything but spaces and tabs is left on the line.</summary>
    private static bool HasMore(string text, int at)
    {
        while (at < text.Length && text[at] is ' ' or '\t') at++;
        return at < text.Length && text[at] is not ('\r' or '\n' or '#');
    }

    private static bool IsControl(string text, int at) => text[at] switch
    {
        '\t' or '\n' => false,
        '\r' => at + 1 >= text.Length || text[at + 1] != '\n',
        >= '\uD800' and <= '\uDBFF' => at + 1 == text.Length || !char.IsLowSurrogate(text[at + 1]),
        >= '\uDC00' and <= '\uDFFF' or '\uFFFE' or '\uFFFF' or '\uFEFF' => true,
        var sign => char.IsControl(sign),
    };

    private static ProblemError Error(Phrase message, Phrase remedy, int line, int column) =>
        ProblemEntries.Error(new(ErrorCodes.UnreadableFile, message, remedy), new Position(line, column));
}
