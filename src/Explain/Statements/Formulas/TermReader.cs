namespace Explain;

/// <summary>Reads one side of a comparison, or a value: a unit at its end belongs to all of it where no other unit stands there.</summary>
internal static class TermReader
{
    /// <summary>The formula that a text is; null when it is none.</summary>
    public static Expr? Read(string text) => Tokens.Read(text) is { } tokens ? Read(tokens) : null;

    /// <summary>Null when the tokens are no formula.</summary>
    public static Expr? Read(ReadOnlySpan<TextToken> tokens)
    {
        for (int at = tokens.Length - 1; at > 0 && at >= tokens.Length - 3; at--)
            if (UnitWords.At(tokens, at) is { } unit && unit.End == tokens.Length && All(tokens[..at], numbersOnly: true) is { } number) return WithUnit.Of(number, unit.Unit);
        return All(tokens, numbersOnly: false);
    }

    private static Expr? All(ReadOnlySpan<TextToken> tokens, bool numbersOnly)
    {
        FormulaReader reader = new(tokens, numbersOnly);
        return reader.Sum() is { } formula && reader.IsAtEnd ? formula : null;
    }
}
