using System.Globalization;

namespace Explain;

/// <summary>Digits in plain text.</summary>
internal static class NumbersInText
{
    /// <summary>The numbers in a text, each without signs and units: 9.5, 12, ½.</summary>
    public static IEnumerable<string> Of(string text)
    {
        for (int at = 0; at < text.Length; at++)
        {
            int start = at;
            while (at < text.Length && (IsDigit(text[at]) || text[at] == '.' && at > start && at + 1 < text.Length && IsDigit(text[at + 1]))) at++;
            if (at > start) yield return text[start..at];
        }
    }

    /// <summary>A digit of any script, small or large, or a fraction.</summary>
    private static bool IsDigit(char c) => CharUnicodeInfo.GetUnicodeCategory(c) is UnicodeCategory.DecimalDigitNumber or UnicodeCategory.LetterNumber or UnicodeCategory.OtherNumber;
}
