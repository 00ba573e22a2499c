using System.Globalization;

namespace Explain;

/// <summary>Finds numbers and names on a finished page that its templates brought.</summary>
internal static class TextAudit
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
            foreach (string stranger in InlineAudit.InWords(writer.Visible(text))) yield return new Finding("V8", null, "template " + stranger);
        }
    }

    /// <summary>The text without the number of a list's entry, which counts on from the entry before or from 1: what the entry says follows straight after it.</summary>
    private static string Unnumbered(string text, ref int listed)
    {
        const string Dot = ". ";
        if (!text.EndsWith(Dot, StringComparison.Ordinal)) return text;
        int start = text.LastIndexOf('\n') + 1;
        if (!int.TryParse(text.AsSpan(start, text.Length - Dot.Length - start), NumberStyles.None, CultureInfo.InvariantCulture, out int number)) return text;
        bool counts = number == 1 || number == listed + 1;
        listed = number;
        return counts ? text[..start] : text;
    }
}
