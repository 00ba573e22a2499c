using System.Text;

namespace Explain;

/// <summary>Makes text that Markdown prints as it stands.</summary>
internal static class MarkdownEscape
{
    private const string Always = "\\`*_[]|$~#";
    private const string OpensBlock = ">+-=";

    public static string Text(string text)
    {
        StringBuilder escaped = new(text.Length + 8);
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i], next = i + 1 < text.Length ? text[i + 1] : ' ';
            if (char.IsControl(c)) { escaped.Append(' '); continue; }
            bool special = Always.Contains(c, StringComparison.Ordinal)
                || (c == '<' && (char.IsAsciiLetter(next) || next is '/' or '!' or '?'))
                || (c == '&' && (char.IsAsciiLetterOrDigit(next) || next == '#'));
            if (special) escaped.Append('\\');
            escaped.Append(c);
        }

        return escaped.ToString();
    }

    /// <summary>Text that begins a line: a sign that would open a heading, a quotation or a list is escaped.</summary>
    public static string AtStart(string text)
    {
        int digits = text.TakeWhile(char.IsAsciiDigit).Count();
        return text.Length == 0 ? text
            : OpensBlock.Contains(text[0], StringComparison.Ordinal) ? "\\" + text
            : digits > 0 && digits < text.Length && text[digits] is ('.' or ')') && (digits + 1 == text.Length || text[digits + 1] is ' ' or '\t' or '\n') ? text.Insert(digits, "\\")
            : text;
    }
}
