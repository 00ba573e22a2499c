namespace Explain;

/// <summary>
/// Marks round every part that a template is given, so that on the finished page what came from the document can be told from what the
/// template brought. The marks are noncharacters of Unicode, which no text may hold.
/// </summary>
internal sealed class Marks
{
    private const char Open = '\uFDD0', Close = '\uFDD1', Replaced = '\uFFFD';
    private readonly HashSet<string> put = new(StringComparer.Ordinal);

    public string Put(string text)
    {
        string plain = text.Replace(Open, Replaced).Replace(Close, Replaced);
        put.Add(plain);
        return Open + plain + Close;
    }

    public static string Strip(string page) => page.Replace(Open.ToString(), "").Replace(Close.ToString(), "");

    /// <summary>What the templates brought, piece by piece; null in place of a part of the document that is not whole.</summary>
    public IEnumerable<string?> Brought(string page)
    {
        for (int at = 0; at < page.Length;)
        {
            int open = page.IndexOf(Open, at), close = open < 0 ? -1 : page.IndexOf(Close, open);
            string outside = open < 0 ? page[at..] : page[at..open];
            yield return outside.Contains(Close) ? null : outside;
            if (open < 0) yield break;
            if (close < 0 || !put.Contains(page[(open + 1)..close])) yield return null;
            at = close < 0 ? page.Length : close + 1;
        }
    }
}
