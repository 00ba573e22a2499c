using System.Globalization;

namespace Explain;

/// <summary>Reads what is to be found: a quantity, a letter, its bounds, a proof, or a thing that only the topic knows.</summary>
internal static class GoalReader
{
    private const string ScaleDrawing = "scale drawing";

    private static readonly Items<Pattern> Nearby =
        [.. QuantityTable.Rows.Select(r => r.Row.In(English.UnitedKingdom)), .. GoalTable.Rows.Select(r => r.Row.In(English.UnitedKingdom)), .. Pattern.Of("bounds of AB"), .. Pattern.Of("prove AB = CD")];

    public static Goal? Read(string text, out Fault? fault)
    {
        Goal? goal = Statement(text, out fault);
        if (goal is null && fault is null) goal = Tokens.Read(text) is { Length: > 0 } tokens ? Row(tokens) ?? Quantity(tokens, text) : null;
        if (goal is null) fault ??= new(ErrorCodes.UnreadableStatement, ProblemPhrases.NotAGoal(text), NearestStatement.Remedy(text, Nearby, StatementPhrases.GoalsAre(NearestStatement.Texts(Nearby))));
        return goal is null ? null : goal with { AsTyped = text };
    }

    /// <summary>prove AB ∥ CD, show AB = 58 m.</summary>
    private static Goal? Statement(string text, out Fault? fault)
    {
        fault = null;
        GoalKind? kind = text.StartsWith("prove ", StringComparison.Ordinal) ? GoalKind.Proof : text.StartsWith("show ", StringComparison.Ordinal) ? GoalKind.Show : null;
        if (kind is null) return null;
        string rest = text[(text.IndexOf(' ') + 1)..].TrimStart();
        if (rest.StartsWith("that ", StringComparison.Ordinal)) rest = rest[5..];
        if (!StatementGrammar.TryRead(rest, out Statement? statement, out fault)) return null;
        Symbol? shown = kind == GoalKind.Show && statement is Compare { Terms: [SymbolUse use, ..] } ? use.Symbol : null;
        return new("", shown, kind.Value) { Statement = statement };
    }

    private static Goal? Row(TextToken[] tokens)
    {
        foreach (GoalRow row in GoalTable.Rows)
            if (row.Row.Match(tokens, 0) is { } match && match.End == tokens.Length) return row.Make(match.Of);
        if (tokens is not [{ Text: GoalTable.Cuts }, { Text: "for" }, { Kind: TokenKind.Number, Text: var number }, { Text: "shares" or "share" }]) return null;
        return int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int shares) ? new("", null, GoalKind.Topical) { Words = GoalTable.Cuts, Shares = shares } : null;
    }

    private static Goal? Quantity(TextToken[] tokens, string text)
    {
        if (QuantityGrammar.Read(tokens) is { } only) return new("", only, GoalKind.Value);
        if ((After(tokens, "bounds", "of") ?? After(tokens, "bounds", "for")) is { } bounded) return new("", bounded, GoalKind.Bounds);
        if (tokens is [{ Text: "scale" }, { Text: "drawing" }, { Text: "of" }, ..] && QuantityGrammar.Read(tokens.AsSpan(3)) is { } drawn)
            return new("", drawn, GoalKind.ByMethod) { Method = ScaleDrawing };
        int by = Array.FindLastIndex(tokens, t => t.Is("by"));
        return by > 0 && MethodNames.Read(text[tokens[by].End..].Trim()) is { } method && QuantityGrammar.Read(tokens.AsSpan(0, by)) is { } found
            ? new("", found, GoalKind.ByMethod) { Method = method } : null;
    }

    private static Symbol? After(TextToken[] tokens, string first, string second)
    {
        int at = tokens[0].Is("the") ? 1 : 0;
        return tokens.Length > at + 2 && tokens[at].Is(first) && tokens[at + 1].Is(second) ? QuantityGrammar.Read(tokens.AsSpan(at + 2)) : null;
    }
}
