using System.Text;

namespace Explain;

/// <summary>The user's text in LaTeX: names of points of the figure and degrees are set as mathematics, units keep to their numbers, all else is text.</summary>
internal sealed class LatexUserText(Items<string> points)
{
    public string Write(string text)
    {
        StringBuilder tex = new();
        for (int at = 0; at < text.Length;)
        {
            int end = at;
            char c = text[at];
            if (char.IsAsciiDigit(c))
            {
                while (end < text.Length && (char.IsAsciiDigit(text[end]) || (text[end] == '.' && end + 1 < text.Length && char.IsAsciiDigit(text[end + 1])))) end++;
                tex.Append(Number(text[at..end], text, ref end));
            }
            else if (char.IsLetter(c))
            {
                while (end < text.Length && (char.IsLetter(text[end]) || text[end] == '′' || TexSigns.IsSubscript(text[end]))) end++;
                string word = text[at..end];
                tex.Append(IsName(word, text, at) ? "$" + TexSigns.Name(word) + "$" : LatexEscape.Text(word));
            }
            else
            {
                end += char.IsSurrogatePair(text, at) ? 2 : 1;
                tex.Append(LatexEscape.Text(text[at..end]));
            }

            at = end;
        }

        return tex.ToString();
    }

    /// <summary>A number with its degree sign, or tied to its unit.</summary>
    private static string Number(string digits, string text, ref int end)
    {
        if (end < text.Length && text[end] == '°')
        {
            end++;
            return "$" + digits + @"^\circ$";
        }

        int unit = end + 1;
        while (unit < text.Length && char.IsAsciiLetter(text[unit])) unit++;
        if (end >= text.Length || text[end] != ' ' || Unit.Parse(text[(end + 1)..unit]) is not { IsAngle: false }) return digits;
        string tied = digits + "~" + text[(end + 1)..unit];
        end = unit;
        return tied;
    }

    /// <summary>Whether capitals name points; one that begins a sentence and has a word after it is taken for the word A or I.</summary>
    private bool IsName(string word, string text, int at)
    {
        if (!char.IsAsciiLetterUpper(word[0]) || PointNames.Distinct(word) is not { } named || !named.All(p => points.Contains(p.Name))) return false;
        bool begins = text.AsSpan(0, at).TrimEnd() is [] or [.., '.' or '?' or '!'];
        return !(begins && word is ("A" or "I") && text.AsSpan(at + word.Length) is [' ', >= 'a' and <= 'z', ..]);
    }
}
