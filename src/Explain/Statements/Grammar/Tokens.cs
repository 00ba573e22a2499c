namespace Explain;

/// <summary>Takes a statement apart. Reads anything, in one pass; what no statement holds becomes a token that matches nothing.</summary>
internal static class Tokens
{
    private static readonly Items<(string Typed, string Is)> Signs =
    [
        ("+/−", "±"), ("+/-", "±"), ("+-", "±"), ("...", "…"), ("⁻¹", "⁻¹"), ("||", "∥"), ("//", "∥"), ("<=", "≤"), (">=", "≥"), ("!=", "≠"), ("''", "″"),
        ("=", "="), ("<", "<"), (">", ">"), ("≤", "≤"), ("≥", "≥"), ("≠", "≠"), ("≅", "≅"), ("∼", "∼"), ("~", "∼"), ("∥", "∥"), ("⊥", "⊥"),
        ("∠", "∠"), ("△", "△"), ("▵", "△"), ("Δ", "△"), ("°", "°"), ("º", "°"), ("′", "′"), ("'", "′"), ("’", "′"), ("″", "″"), ("\"", "″"),
        ("”", "″"), ("±", "±"), ("+", "+"), ("−", "−"), ("-", "−"), ("–", "−"), ("×", "×"), ("*", "×"), ("·", "×"), ("⋅", "×"), ("÷", "÷"),
        ("/", "/"), ("(", "("), (")", ")"), (",", ","), (";", ";"), (":", ":"), ("√", "√"), ("π", "π"), ("²", "²"), ("³", "³"), ("^", "^"),
        ("…", "…"), ("≈", "≈"),
    ];

    /// <summary>The tokens, or null when there are too many.</summary>
    public static TextToken[]? Read(string text)
    {
        List<TextToken> tokens = [];
        for (int at = 0; at < text.Length;)
        {
            int start = at;
            while (at < text.Length && IsSpace(text[at])) at++;
            if (at == text.Length) break;
            if (tokens.Count == TextLimits.Tokens) return null;
            if (Stroke(text[at]) is { } fraction && tokens.Count + 2 < TextLimits.Tokens)
            {
                tokens.AddRange(fraction.Select((f, i) => new TextToken(char.IsAsciiDigit(f) ? TokenKind.Number : TokenKind.Sign, f.ToString(), at, at + 1, i == 0)));
                at++;
                continue;
            }

            (TokenKind kind, string read, int end) = Next(text, at);
            tokens.Add(new(kind, read, at, end, at > start));
            at = end;
        }

        return [.. tokens];
    }

    /// <summary>½ in three tokens, apart from a number before it; null for another character.</summary>
    private static string? Stroke(char sign) => sign switch
    {
        '½' => "1/2", '¼' => "1/4", '¾' => "3/4", '⅓' => "1/3", '⅔' => "2/3", '⅛' => "1/8", '⅜' => "3/8", '⅝' => "5/8", '⅞' => "7/8",
        _ => null,
    };

    public static bool IsSpace(char sign) => char.IsWhiteSpace(sign) || sign == '\u2060';

    private static (TokenKind Kind, string Text, int End) Next(string text, int at)
    {
        char sign = text[at];
        if (char.IsAsciiDigit(sign) || (sign == '.' && Digit(text, at + 1))) return Number(text, at);
        if (char.IsAsciiLetterUpper(sign)) return At(text, at + 1) is >= 'a' and <= 'z' ? Word(text, at) : Name(text, at);
        if (char.IsAsciiLetterLower(sign)) return Word(text, at);
        foreach ((string typed, string own) in Signs)
            if (string.CompareOrdinal(text, at, typed, 0, typed.Length) == 0) return (TokenKind.Sign, own, at + typed.Length);
        return (sign is >= 'α' and <= 'ω' ? TokenKind.Word : TokenKind.Other, sign.ToString(), at + 1);
    }

    private static (TokenKind Kind, string Text, int End) Number(string text, int at)
    {
        int end = Digits(text, at);
        if (At(text, end) == '.' && Digit(text, end + 1)) end = Digits(text, end + 1);
        int power = At(text, end + 1) is '+' or '-' ? end + 2 : end + 1;
        if (At(text, end) is 'e' or 'E' && Digit(text, power)) end = Digits(text, power);
        return (TokenKind.Number, text[at..end], end);
    }

    /// <summary>Capitals, each with primes or small digits; A…K stands for all letters from A to K.</summary>
    private static (TokenKind Kind, string Text, int End) Name(string text, int at)
    {
        int end = at;
        while (end < text.Length)
        {
            int dots = At(text, end) == '…' ? 1 : string.CompareOrdinal(text, end, "...", 0, 3) == 0 ? 3 : 0;
            if (end > at && dots > 0 && char.IsAsciiLetterUpper(At(text, end + dots))) end += dots;
            if (!char.IsAsciiLetterUpper(At(text, end))) break;
            for (end++; At(text, end) is '\'' or '’' or '′' or >= '₀' and <= '₉' || Digit(text, end); end++) { }
        }

        string name = text[at..end].Replace("...", "…", StringComparison.Ordinal);
        return (TokenKind.Name, string.Concat(name.Select(PointNames.Normal)), end);
    }

    private static (TokenKind Kind, string Text, int End) Word(string text, int at)
    {
        int end = at + 1;
        while (char.IsAsciiLetterLower(At(text, end)) || (end > at + 1 && At(text, end) == '-' && char.IsAsciiLetterLower(At(text, end + 1)))) end++;
        return (TokenKind.Word, text[at..end].ToLowerInvariant(), end);
    }

    private static int Digits(string text, int at)
    {
        while (Digit(text, at)) at++;
        return at;
    }

    private static bool Digit(string text, int at) => char.IsAsciiDigit(At(text, at));

    private static char At(string text, int at) => at < text.Length ? text[at] : '\0';
}
