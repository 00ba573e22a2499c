using System.Text;
using System.Text.RegularExpressions;

namespace Explain;

/// <summary>The user's text in LaTeX: names of points of the figure and degrees are set as mathematics, all else is text.</summary>
internal sealed partial class LatexUserText(Items<string> points)
{
    public string Write(string text)
    {
        StringBuilder tex = new();
        int at = 0;
        foreach (Match match in Mathematical().Matches(text))
        {
            tex.Append(LatexEscape.Text(text[at..match.Index]));
            tex.Append(match.Groups["degrees"].Success ? "$" + match.Groups["degrees"].Value + @"^\circ$"
                : match.Groups["amount"].Success ? match.Groups["amount"].Value + "~" + match.Groups["unit"].Value
                : IsName(text, match) ? "$" + TexSigns.Name(match.Value) + "$" : LatexEscape.Text(match.Value));
            at = match.Index + match.Length;
        }

        return tex.Append(LatexEscape.Text(text[at..])).ToString();
    }

    /// <summary>Whether capitals name points; a capital that begins a sentence and has a word after it is taken for a word.</summary>
    private bool IsName(string text, Match match)
    {
        if (PointNames.Distinct(match.Value) is not { } named || !named.All(p => points.Contains(p.Name))) return false;
        bool begins = text.AsSpan(0, match.Index).TrimEnd() is [] or [.., '.' or '?' or '!'];
        return !(begins && match.Value is "A" or "I" && text.AsSpan(match.Index + match.Length) is [' ', >= 'a' and <= 'z', ..]) ;
    }

    [GeneratedRegex(@"(?<degrees>\d+(\.\d+)?)°|(?<amount>\b\d+(\.\d+)?) (?<unit>(mm|cm|m|km|in|ft|yd|mi)\b)|(?<![\p{L}\d])([A-Z][₀-₉′]*)+(?![\p{L}\d])", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Mathematical();
}
