using System.Globalization;
using System.Text.RegularExpressions;

namespace Explain;

/// <summary>Finds numbers and names on a finished page that its templates brought.</summary>
internal static partial class TextAudit
{
    public static IEnumerable<Finding> Of(string page, Marks marks, InlineWriter writer)
    {
        int listed = 0;
        foreach (string? brought in marks.Brought(page))
        {
            if (brought is null)
            {
                yield return new Finding("V8", null, "template part");
                continue;
            }

            string text = Unnumbered(brought, ref listed);
            foreach (string stranger in Strangers(writer.Visible(text))) yield return new Finding("V8", null, "template " + stranger);
        }
    }

    private static IEnumerable<string> Strangers(string text) => NumbersInText.Of(text).Select(n => "number " + n).Concat(NamesInText.Of(text).Select(n => "name " + n));

    /// <summary>The text without the number of a list's entry, which counts on from the entry before or from 1.</summary>
    private static string Unnumbered(string text, ref int listed)
    {
        if (EntryNumber.Match(text) is not { Success: true } match || !int.TryParse(match.Groups[1].Value, NumberStyles.None, CultureInfo.InvariantCulture, out int number)) return text;
        bool counts = number == 1 || number == listed + 1;
        listed = number;
        return counts ? text[..match.Groups[1].Index] : text;
    }

    /// <summary>The number of an entry in Markdown, straight before what the entry says.</summary>
    [GeneratedRegex(@"(?:^|\n)([0-9]+)\. $")]
    private static partial Regex EntryNumber { get; }
}
