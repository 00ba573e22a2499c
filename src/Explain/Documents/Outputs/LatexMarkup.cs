using System.Text;

namespace Explain;

/// <summary>Takes commands, labels and lengths out of what a LaTeX template brings. Lengths are in em, ex, pt or shares of the line; 7cm is none.</summary>
internal static class LatexMarkup
{
    private const string Label = @"\label{", Share = @"/1000\relax";
    private static readonly string[] Units = ["em", "ex", "pt"], Widths = [@"\linewidth", @"\textwidth", @"\columnwidth"];

    public static string Without(string text)
    {
        StringBuilder seen = new();
        for (int at = 0; at < text.Length;)
        {
            int end = text[at] == '\\' ? Command(text, at) : Length(text, at);
            seen.Append(end > at ? ' ' : text[at]);
            at = int.Max(end, at + 1);
        }

        return seen.ToString();
    }

    private static int Command(string text, int at)
    {
        if (Stands(Label, text, at)) return text.IndexOf('}', at) + 1;
        int end = at + 1;
        while (end < text.Length && (char.IsAsciiLetter(text[end]) || text[end] == '@')) end++;
        return end;
    }

    /// <summary>Where a length ends; where none begins, its place.</summary>
    private static int Length(string text, int at)
    {
        int end = at;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || text[end] == '.')) end++;
        if (end == at) return at;
        if (Units.Any(u => Stands(u, text, end)) && (end + 2 == text.Length || !char.IsAsciiLetter(text[end + 2]))) return end + 2;
        if (Widths.Any(w => Stands(w, text, end))) return end;
        return at > 0 && text[at - 1] == '*' && Stands(Share, text, end) ? end + Share.Length : at;
    }

    private static bool Stands(string what, string text, int at) => text.AsSpan(at).StartsWith(what);
}
