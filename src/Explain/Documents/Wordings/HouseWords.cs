namespace Explain;

/// <summary>
/// What a wording may say of its own. Numbers and names come from its placeholders; a digit may stand in it only where it belongs to the
/// rule itself, and then the library's words for it hold it too, as 180 for the angles of a triangle.
/// </summary>
internal static class HouseWords
{
    /// <exception cref="WordingException">A number or what reads like a name stands in the line and not in the library's.</exception>
    public static void Check(WordingLine line, Items<WordingPiece> standard)
    {
        HashSet<string> allowed = [.. NumbersInText.Of(line.Id), .. Said(standard).SelectMany(Strangers)];
        if (Said(WordingPiece.Parse(line.Text)!).SelectMany(Strangers).FirstOrDefault(s => !allowed.Contains(s)) is { } stranger)
            throw new WordingException(line.Id, null, null, stranger);
    }

    private static IEnumerable<string> Strangers(string text) => NumbersInText.Of(text).Concat(NamesInText.Of(text));

    private static IEnumerable<string> Said(IEnumerable<WordingPiece> pieces) => pieces.SelectMany(p => p switch
    {
        WordingWords words => [words.Text],
        WordingChoice choice => (IEnumerable<string>)[choice.One, choice.Other],
        _ => [],
    });
}
