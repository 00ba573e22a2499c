namespace Explain;

/// <summary>Reads units, as signs and as words of both Englishes, and prints their words.</summary>
internal static class UnitWords
{
    private static readonly Items<(Unit Unit, string One, string Many, string? Other)> Table =
    [
        (Unit.Millimetre, "millimetre", "millimetres", "millimeter"), (Unit.Centimetre, "centimetre", "centimetres", "centimeter"),
        (Unit.Metre, "metre", "metres", "meter"), (Unit.Kilometre, "kilometre", "kilometres", "kilometer"),
        (Unit.Inch, "inch", "inches", null), (Unit.Foot, "foot", "feet", null), (Unit.Yard, "yard", "yards", null), (Unit.Mile, "mile", "miles", null),
        (Unit.Degree, "degree", "degrees", null), (Unit.Minute, "minute", "minutes", null), (Unit.Second, "second", "seconds", null),
    ];

    /// <summary>Every way of typing a unit, signs last.</summary>
    public static IEnumerable<string> All =>
        [.. Table.SelectMany(u => (string[])[u.Many, u.One, .. u.Other is null ? [] : (string[])[u.Other + "s", u.Other]]), .. Unit.Table.Where(u => !u.IsAngle).Select(u => u.Symbol), "deg"];

    /// <summary>The unit that begins at a token and the place after it; null where none begins.</summary>
    public static (Unit Unit, int End)? At(ReadOnlySpan<TextToken> tokens, int at)
    {
        if (at >= tokens.Length || tokens[at].Kind is not (TokenKind.Word or TokenKind.Sign)) return null;
        if (at + 1 < tokens.Length && tokens[at + 1].Is("∠")) return null;
        if (tokens[at].Text is "square" or "sq" && at + 1 < tokens.Length && Of(tokens[at + 1].Text) is { IsAngle: false } side) return (side.To(2), at + 2);
        if (Of(tokens[at].Text) is not { } unit) return null;
        if (unit.IsAngle) return (unit, at + 1);
        int end = AfterSquare(tokens, at + 1);
        return end > at + 1 ? (unit.To(2), end) : (unit, end);
    }

    /// <summary>The unit of a sign or a word; null when it is none.</summary>
    public static Unit? Of(string word)
    {
        foreach ((Unit unit, string one, string many, string? other) in Table)
            if (word == one || word == many || word == other || (other is not null && word == other + "s")) return unit;
        return Unit.Parse(word);
    }

    /// <summary>The units of a measurement as typed, in their order: feet and inches of 5 ft 3 in.</summary>
    public static Items<Unit> In(string typed)
    {
        TextToken[] tokens = Tokens.Read(typed) ?? [];
        return [.. Enumerable.Range(0, tokens.Length).TakeWhile(i => !tokens[i].Is("±")).Select(i => At(tokens, i)?.Unit).OfType<Unit>().Distinct()];
    }

    private static int AfterSquare(ReadOnlySpan<TextToken> tokens, int at)
    {
        if (at < tokens.Length && tokens[at].Is("²")) return at + 1;
        if (at < tokens.Length && tokens[at] is { Kind: TokenKind.Number, Text: "2", Spaced: false }) return at + 1;
        return at + 1 < tokens.Length && tokens[at].Is("^") && tokens[at + 1] is { Kind: TokenKind.Number, Text: "2" } ? at + 2 : at;
    }
}
