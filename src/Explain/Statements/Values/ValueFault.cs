using System.Globalization;

namespace Explain;

/// <summary>Says what is wrong with a value that cannot be read.</summary>
internal static class ValueFault
{
    private const int LongestLookedAt = 100;

    public static Fault Of(string text) =>
        text.Trim().Length == 0 ? new(ErrorCodes.UnreadableNumber, StatementPhrases.NoValue(), StatementPhrases.WriteAValue()) : text.Length > LongestLookedAt ? Unreadable(text) : Comma(text) ?? Letter(text) ?? Large(text) ?? UnknownUnit(text) ?? Unreadable(text);

    private static Fault Unreadable(string text) => new(ErrorCodes.UnreadableNumber, StatementPhrases.NotAValue(text), StatementPhrases.WriteAValue());

    /// <summary>9,5 cm is a decimal; 12,500 m has its thousands apart.</summary>
    private static Fault? Comma(string text)
    {
        int comma = text.IndexOf(',');
        if (comma < 1 || comma + 1 == text.Length || !char.IsAsciiDigit(text[comma - 1]) || !char.IsAsciiDigit(text[comma + 1])) return null;
        string after = string.Concat(text.Skip(comma + 1).TakeWhile(char.IsAsciiDigit));
        bool thousands = after.Length == 3 && text.Take(comma).SkipWhile(c => !char.IsAsciiDigit(c)).First() != '0';
        return thousands
            ? new(ErrorCodes.UnreadableNumber, StatementPhrases.ThousandsComma(text), StatementPhrases.Write(text.Replace(",", "", StringComparison.Ordinal)))
            : new(ErrorCodes.UnreadableNumber, StatementPhrases.DecimalComma(text), StatementPhrases.Write(text.Replace(',', '.')));
    }

    /// <summary>1O cm and l2 cm: letters that look like digits.</summary>
    private static Fault? Letter(string text)
    {
        foreach (string part in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string number = string.Concat(part.TakeWhile(c => char.IsAsciiDigit(c) || c is '.' or 'O' or 'o' or 'I' or 'l'));
            if (!number.Any(char.IsAsciiDigit) || !number.Any(char.IsAsciiLetter)) continue;
            string digits = number.Replace('O', '0').Replace('o', '0').Replace('I', '1').Replace('l', '1');
            return new(ErrorCodes.UnreadableNumber, StatementPhrases.LetterInNumber(text, number, number.First(char.IsAsciiLetter).ToString()),
                StatementPhrases.DidYouMean(text.Replace(number, digits, StringComparison.Ordinal)));
        }

        return null;
    }

    private static Fault? Large(string text) =>
        (Tokens.Read(text) ?? []).Any(t => t.Kind == TokenKind.Number && PlainNumber.Decimal(t.Text) is null)
            ? new(ErrorCodes.TooLarge, StatementPhrases.NumberTooLarge(text, TextLimits.Digits), null) : null;

    /// <summary>A number, then words that are no unit.</summary>
    private static Fault? UnknownUnit(string text)
    {
        TextToken[] tokens = Tokens.Read(text) ?? [];
        int word = Array.FindIndex(tokens, t => t.Kind is TokenKind.Word && t.Text.Length > 1 && UnitWords.Of(t.Text) is null);
        if (word < 1 || !ValueReader.TryRead(text[..tokens[word].Start], out _, out _)) return null;
        string typed = text[tokens[word].Start..].Trim();
        string units = string.Join(", ", Unit.Table.Select(u => u.Symbol));
        Phrase remedy = Spelling.Nearest(typed, UnitWords.All) is { } near
            ? StatementPhrases.DidYouMean(string.Create(CultureInfo.InvariantCulture, $"{text[..tokens[word].Start].Trim()} {near}"))
            : StatementPhrases.Units(units);
        return new(ErrorCodes.UnknownUnit, StatementPhrases.UnknownUnit(text, typed), remedy);
    }
}
