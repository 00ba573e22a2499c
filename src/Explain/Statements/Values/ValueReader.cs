using System.Diagnostics.CodeAnalysis;

namespace Explain;

/// <summary>Reads values: 9.5 cm, 62° 30′, 31.5(√2 + 1) cm, (2x + 16)°, 120 m ± 0.5 m.</summary>
internal static class ValueReader
{
    /// <summary>Reads a value, with or without a unit, or says what is wrong with the text.</summary>
    public static bool TryRead(string text, [NotNullWhen(true)] out GivenValue? value, [NotNullWhen(false)] out Fault? fault)
    {
        value = Tokens.Read(text) is { } tokens ? Read(text, tokens) : null;
        fault = value is null ? ValueFault.Of(text) : null;
        return value is not null;
    }

    private static GivenValue? Read(string text, TextToken[] tokens)
    {
        int sign = Array.FindIndex(tokens, t => t.Is("±")), close = Array.FindLastIndex(tokens, t => t.Is(")"));
        if (sign > 1 && close > sign && tokens[0].Is("(")) return Bracketed(text, tokens, sign, close);
        if (sign < 0) return Formula(tokens) is { } only ? new(only, null, text.Trim()) : null;
        if (Formula(tokens.AsSpan(0, sign)) is not { } formula || Formula(tokens.AsSpan(sign + 1)) is not Quantity within) return null;
        string typed = text[..tokens[sign].Start].Trim();
        if (GivenValue.UnitIn(formula) != Unit.None || within.Unit == Unit.None) return new(formula, within, typed);

        // 120 ± 0.5 m: the unit stands at the end for both.
        string unit = text[tokens[^1].Start..].TrimStart(['0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '.']).Trim();
        return WithUnit.Of(formula, within.Unit) is { } both ? new(both, within, typed + (within.Unit.IsAngle ? "" : " ") + unit) : null;
    }

    /// <summary>(120 ± 0.5) m.</summary>
    private static GivenValue? Bracketed(string text, TextToken[] tokens, int sign, int close)
    {
        if (UnitWords.At(tokens, close + 1) is not { } unit || unit.End != tokens.Length) return null;
        if (Formula(tokens.AsSpan(1..sign)) is not Quantity { Unit.Power: 0 } number || Formula(tokens.AsSpan((sign + 1)..close)) is not Quantity { Unit.Power: 0 } within) return null;
        string typed = text[tokens[1].Start..tokens[sign].Start].Trim() + (unit.Unit.IsAngle ? "" : " ") + text[tokens[close].End..].Trim();
        return new(new Quantity(number.Amount, unit.Unit), new Quantity(within.Amount, unit.Unit), typed);
    }

    /// <summary>A number or an expression in letters: no quantity of the figure, no function of one.</summary>
    private static Expr? Formula(ReadOnlySpan<TextToken> tokens)
    {
        if (tokens.Length == 0 || TermReader.Read(tokens) is not { } term || !term.Symbols().All(s => s is Letter)) return null;
        if (term is Quantity || term.Symbols().Any()) return term;
        return PlainNumber.Of(term) is { } number ? new Quantity(number, Unit.None) : null;
    }
}
