namespace Explain;

/// <summary>Makes sentences: the capital letter and the full stop that wordings leave out.</summary>
internal static class Sentence
{
    private const string Ends = ".?!:✓";

    public static Items<Inline> Of(Items<Inline> runs) => runs.Count == 0 ? runs : Stop(Capital(runs));

    /// <summary>The runs with a capital at the beginning; names stay as they are, and what the user typed as text of its own.</summary>
    public static Items<Inline> Capital(Items<Inline> runs) => runs.Count == 0 ? runs : runs[0] switch
    {
        WordRun { Text.Length: > 0 } w => [w with { Text = Upper(w.Text) }, .. runs.Skip(1)],
        UserRun { IsPhrase: true, Text: [>= 'a' and <= 'z', _, ..] } u => [u with { Text = Upper(u.Text) }, .. runs.Skip(1)],
        MathRun m => [m with { Is = Capital(m.Is) }, .. runs.Skip(1)],
        Strong s => [s with { Runs = Capital(s.Runs) }, .. runs.Skip(1)],
        _ => runs,
    };

    /// <summary>Sentences one after the other.</summary>
    public static Items<Inline> Join(params IEnumerable<Items<Inline>> sentences)
    {
        List<Inline> joined = [];
        foreach (Items<Inline> sentence in sentences.Where(s => s.Count > 0))
        {
            if (joined.Count > 0) joined.Add(new WordRun(" "));
            joined.AddRange(sentence);
        }

        return [.. joined];
    }

    private static Items<Inline> Stop(Items<Inline> runs) => Ends.Contains(Last(runs)) ? runs : runs.With(new WordRun("."));

    private static MathPiece Capital(MathPiece piece) => piece switch
    {
        MathWords w => new MathWords(Upper(w.Text)),
        MathRow { Of: [var first, ..] } row => row with { Of = [Capital(first), .. row.Of.Skip(1)] },
        _ => piece,
    };

    private static char Last(Items<Inline> runs) => runs[^1] switch
    {
        WordRun { Text: [.., var last] } => last,
        UserRun { Text: [.., var last] } => last,
        Strong { Runs.Count: > 0 } s => Last(s.Runs),
        Emphasis { Runs.Count: > 0 } e => Last(e.Runs),
        _ => ' ',
    };

    private static string Upper(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
