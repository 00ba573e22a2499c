namespace Explain;

/// <summary>A wording file as read: one phrase a line, <c>id: text</c>. The generator reads with the same code.</summary>
/// <param name="Lines">The lines that say something.</param>
/// <param name="Faults">The lines that cannot be read.</param>
internal sealed record WordingFile(IReadOnlyList<WordingLine> Lines, IReadOnlyList<WordingFault> Faults)
{
    private const string NotFirst = "{}[]&*!|>'%@`#,?-\"";

    /// <summary>Reads a whole file, with either kind of line ending, with or without a byte-order mark.</summary>
    public static WordingFile Read(string text)
    {
        List<WordingLine> lines = [];
        List<WordingFault> faults = [];
        int start = 0, row = 0;
        foreach (string raw in text.Split('\n'))
        {
            string line = raw.TrimEnd('\r', ' ');
            string content = line.TrimStart('\uFEFF');
            int at = start + line.Length - content.Length;
            if (content.Length > 0 && content[0] != '#') Add(content, at);
            start += raw.Length + 1;
            row++;
        }

        return new(lines, faults);

        void Add(string content, int at)
        {
            int colon = content.IndexOf(": ", StringComparison.Ordinal);
            string said = colon < 0 ? "" : content.Substring(colon + 2).Trim();
            if (colon <= 0 || said.Length == 0) Fault(WordingFaultKind.NotAPair);
            else if (!content.Take(colon).All(IsOfId)) Fault(WordingFaultKind.BadId);
            else if (Unquote(said) is not { } words) Fault(WordingFaultKind.BadQuotes);
            else if (WordingPiece.Parse(words) is null) Fault(WordingFaultKind.BadBraces);
            else lines.Add(new(content.Substring(0, colon), words, row, at, content.Length));

            void Fault(WordingFaultKind kind) => faults.Add(new(kind, content.Split(':')[0], row, at, content.Length));
        }
    }

    private static bool IsOfId(char c) => c is (>= 'a' and <= 'z') or (>= '0' and <= '9') or '-' or '.' or ' ';

    /// <summary>The text without its quotes; null where quotes are missing, open, or hold an unknown escape.</summary>
    private static string? Unquote(string said)
    {
        if (said[0] != '"') return NotFirst.IndexOf(said[0]) >= 0 || said.Contains(": ") || said.Contains(" #") || said.EndsWith(":", StringComparison.Ordinal) ? null : said;
        if (said.Length < 2 || said[said.Length - 1] != '"') return null;
        string inner = said.Substring(1, said.Length - 2);
        string plain = "";
        for (int i = 0; i < inner.Length; i++)
        {
            if (inner[i] == '"') return null;
            if (inner[i] == '\\' && (++i == inner.Length || inner[i] is not ('"' or '\\'))) return null;
            plain += inner[i];
        }

        return plain;
    }
}
