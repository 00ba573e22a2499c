using System.Text;

namespace Explain;

/// <summary>Takes the tags of HTML out of what a Markdown template brings; all else is read by the reader of the page.</summary>
internal static class MarkdownMarkup
{
    public static string Without(string text)
    {
        StringBuilder seen = new();
        for (int at = 0; at < text.Length; at++)
        {
            int end = text[at] == '<' && at + 1 < text.Length && (char.IsAsciiLetter(text[at + 1]) || text[at + 1] == '/') ? text.IndexOfAny(['<', '>'], at + 1) : -1;
            if (end > 0 && text[end] == '>') at = end;
            else seen.Append(text[at]);
        }

        return seen.ToString();
    }
}
