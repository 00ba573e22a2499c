using System.Text;

namespace Explain;

/// <summary>Makes text that Markdown prints as it stands.</summary>
internal static class MarkdownEscape
{
    private const string Always = "\\`*_[]|$~";
    private const string AtStart = "#>+-=";

    public static string Text(string text)
    {
        StringBuilder escaped = new(text.Length + 8);
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i], next = i + 1 < text.Length ? text[i + 1] : ' ';
            if (char.IsControl(c)) { escaped.Append(' '); continue; }
            bool first = text.AsSpan(0, i).Trim().IsEmpty;
            bool special = Always.Contains(c, StringComparison.Ordinal)
                || (c == '<' && (char.IsAsciiLetter(next) || next is '/' or '!' or '?'))
                || (c == '&' && (char.IsAsciiLetterOrDigit(next) || next == '#'))
                || (first && AtStart.Contains(c, StringComparison.Ordinal))
                || (c is '.' or ')' && next == ' ' && i > 0 && text.AsSpan(0, i).Trim().IndexOfAnyExceptInRange('0', '9') < 0);
            if (special) escaped.Append('\\');
            escaped.Append(c);
        }

        return escaped.ToString();
    }
}
