namespace Explain;

/// <summary>What reads like the name of a point, a line, an angle or a shape in plain text.</summary>
internal static class NamesInText
{
    /// <summary>Longer words in capitals, and those that repeat a letter, such as SSA, name no object.</summary>
    private const int MostLetters = 4;

    public static IEnumerable<string> Of(string text)
    {
        for (int at = 0; at < text.Length; at++)
        {
            int start = at;
            while (at < text.Length && (char.IsLetter(text[at]) || text[at] == '′' || TexSigns.IsSubscript(text[at]))) at++;
            if (at > start && IsName(text[start..at]) && !IsWord(text, start, at)) yield return text[start..at];
        }
    }

    private static bool IsName(string word) => word.Count(char.IsAsciiLetterUpper) <= MostLetters && !word.Any(char.IsLower) && PointNames.Distinct(word) is not null;

    /// <summary>The word A or I, where a sentence may begin.</summary>
    private static bool IsWord(string text, int start, int end) => text[start..end] is "A" or "I" && end + 1 < text.Length && text[end] == ' ' && char.IsLower(text[end + 1])
        && (text[..start].TrimEnd() is not [.., var before] || !(char.IsLetterOrDigit(before) || before is ',' or ';' or ')'));
}
