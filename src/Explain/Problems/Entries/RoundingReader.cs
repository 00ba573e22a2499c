using System.Globalization;

namespace Explain;

/// <summary>Reads rounding rules: 3 significant figures, nearest 0.1 m, nearest tenth, exact.</summary>
internal static class RoundingReader
{
    /// <summary>Null when the text is none. <c>exact</c> alone asks for no figures: its digits are 0.</summary>
    public static Rounding? Read(string text)
    {
        string[] parts = text.Split(',', StringSplitOptions.TrimEntries);
        bool exact = parts is ["exact", ..];
        return (exact, parts.Length) switch
        {
            (true, 1) => new(RoundingKind.SignificantFigures, 0) { Exact = true },
            (true, 2) => Rule(parts[1]) is { } rule ? rule with { Exact = true } : null,
            (false, 1) => Rule(parts[0]),
            _ => null,
        };
    }

    /// <summary>The step of "nearest 0.1 m", with its unit; null when the text is none.</summary>
    public static Quantity? Nearest(string text)
    {
        string rest = AfterWords(text, "to the ", "nearest ");
        if (!text.Contains("nearest ", StringComparison.Ordinal) || rest.Length == 0) return null;
        if (UnitWords.Of(rest) is { } unit) return new(Exact.One, unit);
        return ValueReader.TryRead(rest, out GivenValue? value, out _) && value is { Is: Quantity { Amount.Sign: > 0 } step, Within: null } ? step : null;
    }

    private static Rounding? Rule(string text)
    {
        if (Places(AfterWords(text, "to the ", "nearest ")) is { } places && text.Contains("nearest ", StringComparison.Ordinal)) return new(RoundingKind.DecimalPlaces, places);
        if (Nearest(text) is { } step)
            return step.Amount.Rational is { } size && Decimals.PlacesOf(size) is not null ? new(RoundingKind.Nearest, 0) { Step = size, Unit = step.Unit == Unit.None ? null : step.Unit, Fractions = text.Contains('/', StringComparison.Ordinal) } : null;
        string[] words = AfterWords(text, "correct ", "to ").Split(' ', 2, StringSplitOptions.TrimEntries);
        if (words.Length < 2 || !int.TryParse(words[0], NumberStyles.None, CultureInfo.InvariantCulture, out int digits) || digits > TextLimits.RoundingDigits) return null;
        return words[1] switch
        {
            "significant figures" or "significant figure" or "s.f." or "sf" or "sig figs" or "significant digits" or "significant digit" => digits == 0 ? null : new(RoundingKind.SignificantFigures, digits),
            "decimal places" or "decimal place" or "d.p." or "dp" => new(RoundingKind.DecimalPlaces, digits),
            _ => null,
        };
    }

    private static int? Places(string name) => name switch
    {
        "whole number" or "integer" => 0,
        "tenth" => 1,
        "hundredth" => 2,
        "thousandth" => 3,
        _ => null,
    };

    private static string AfterWords(string text, params ReadOnlySpan<string> words)
    {
        foreach (string word in words)
            if (text.StartsWith(word, StringComparison.Ordinal)) text = text[word.Length..].TrimStart();
        return text;
    }
}
