namespace Explain;

/// <summary>Reads and prints quantities.</summary>
internal static class QuantityGrammar
{
    /// <summary>The quantity that begins at a token, read as far as it goes; null where none begins.</summary>
    public static (Symbol Of, int End)? Match(ReadOnlySpan<TextToken> tokens, int at)
    {
        (Symbol Of, int End)? longest = null;
        foreach (QuantityRow row in QuantityTable.Rows)
            if (row.Row.Match(tokens, at) is { } match && (longest is null || match.End > longest.Value.End)) longest = (row.Make(match.Of), match.End);
        return longest;
    }

    /// <summary>The quantity that a text is, a letter included; null when it is none.</summary>
    public static Symbol? Read(string text) => Tokens.Read(text) is { } tokens ? Read(tokens) : null;

    /// <summary>The quantity that the tokens are; null when they are none.</summary>
    public static Symbol? Read(ReadOnlySpan<TextToken> tokens)
    {
        if (Match(tokens, 0) is { } match && match.End == tokens.Length) return match.Of;
        if (tokens.Length == 1 && Words.IsLetter(tokens[0])) return new Letter(tokens[0].Text);
        return tokens.Length > 1 && Words.Function(tokens[0].Text) is { } function && AngleAt(tokens, 1) is { } angle && angle.End == tokens.Length
            ? new Ratio(function, angle.Of) : null;
    }

    /// <summary>An angle named after a function, where its word may be left out: sin ABC, sin ∠ABC.</summary>
    public static (Angle Of, int End)? AngleAt(ReadOnlySpan<TextToken> tokens, int at)
    {
        if (Match(tokens, at) is { Of: Angle angle } match) return (angle, match.End);
        return at < tokens.Length && tokens[at].Kind == TokenKind.Name && PointNames.Distinct(tokens[at].Text) is { Count: 3 } p ? (new(p[0], p[1], p[2]), at + 1) : null;
    }

    /// <summary>The quantity as plain text: angle QPT, m∠QPT, the distance from T to PQ.</summary>
    public static string Write(Symbol symbol, English english) => symbol switch
    {
        Letter letter => letter.Name,
        Ratio ratio => Words.Of(ratio.Function) + " " + AfterFunction(ratio.Of, english),
        _ => string.Concat(Pieces(symbol, english).Select(p => p.Words)),
    };

    /// <summary>An angle as it stands after a function: PTQ, ∠PTQ.</summary>
    public static string AfterFunction(Angle angle, English english) =>
        angle.Reflex ? "(" + Write(angle, english) + ")" : (english == English.UnitedStates ? "∠" : "") + angle.First.Name + angle.Vertex.Name + angle.Second.Name;

    /// <summary>The quantity as words and names.</summary>
    public static Items<StatementPiece> Pieces(Symbol symbol, English english)
    {
        foreach (QuantityRow row in QuantityTable.Rows)
            if (row.Take(symbol) is { } of && row.Row.Write(of, english) is { } pieces) return pieces;
        throw new ArgumentException(symbol.GetType().Name, nameof(symbol));
    }
}
