namespace Explain.Generators;

/// <summary>Words that belong to one English only, from the file that pairs them: <c>metre: meter</c>.</summary>
internal sealed class OtherEnglish(IReadOnlyList<WordingLine> pairs)
{
    public const string FileName = "words";

    public static OtherEnglish Of(IEnumerable<WordingEntry> entries) => new([.. entries.Where(e => e.English == FileName).Select(e => e.Line)]);

    /// <summary>UK words in US wordings, US words in UK wordings, and UK words that a US reader would get for want of a US line.</summary>
    public IEnumerable<Finding> Check(IReadOnlyList<WordingEntry> entries)
    {
        HashSet<string> american = [.. entries.Where(e => e.English == "us").Select(e => e.Line.Id)];
        foreach (WordingEntry entry in entries)
        {
            foreach (WordingLine pair in pairs)
            {
                if (entry.English == "us" && Holds(entry, pair.Id)) yield return Found(entry, pair.Id, "write '" + pair.Text + "'");
                if (entry.English == "uk" && Holds(entry, pair.Text)) yield return Found(entry, pair.Text, "write '" + pair.Id + "'");
                if (entry.English == "uk" && Holds(entry, pair.Id) && !american.Contains(entry.Line.Id))
                    yield return Found(entry, pair.Id, $"a US reader would get it, because no US file words {entry.Line.Id}; "
                        + $"paste there: {entry.Line.Id}: \"{entry.Line.Text}\" with '{pair.Text}'");
            }
        }
    }

    private static Finding Found(WordingEntry entry, string word, string instead) => Finding.Of(Descriptors.OtherEnglish, entry.At, word, instead);

    /// <summary>Whether the words, placeholders apart, hold a word or several as a whole; a plural s may follow.</summary>
    private static bool Holds(WordingEntry entry, string word) => entry.Pieces.Any(p => p switch
    {
        WordingWords w => Holds(w.Text, word),
        WordingChoice c => Holds(c.One, word) || Holds(c.Other, word),
        _ => false,
    });

    private static bool Holds(string text, string word)
    {
        for (int at = text.IndexOf(word, StringComparison.OrdinalIgnoreCase); at >= 0; at = text.IndexOf(word, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            int end = at + word.Length;
            if (end < text.Length && text[end] is 's') end++;
            if ((at == 0 || !char.IsLetter(text[at - 1])) && (end == text.Length || !char.IsLetter(text[end]))) return true;
        }

        return false;
    }
}
