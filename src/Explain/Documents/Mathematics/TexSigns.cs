namespace Explain;

/// <summary>The TeX of the signs that formulas use.</summary>
internal static class TexSigns
{
    private const string Subscripts = "₀₁₂₃₄₅₆₇₈₉";

    /// <summary>Signs of mathematics and their TeX, inside dollar signs.</summary>
    public static string Sign(string sign) => sign switch
    {
        "×" => @"\times",
        "·" => @"\cdot",
        "÷" => @"\div",
        "−" => "-",
        "≈" => @"\approx",
        "≠" => @"\ne",
        "≤" => @"\le",
        "≥" => @"\ge",
        "∠" => @"\angle",
        "m∠" => @"m\angle",
        "△" => @"\triangle",
        "≅" => @"\cong",
        "∥" => @"\parallel",
        "⊥" => @"\perp",
        "±" => @"\pm",
        "π" => @"\pi",
        "√" => @"\surd",
        "…" => @"\ldots",
        "°" => @"^\circ",
        "′" => "'",
        "″" => "''",
        "½" => @"\tfrac12",
        "¼" => @"\tfrac14",
        "¾" => @"\tfrac34",
        "²" => "^2",
        "³" => "^3",
        "✓" => @"\checkmark",
        "∎" => @"\blacksquare",
        "→" => @"\to",
        "∼" => @"\sim",
        _ => sign,
    };

    /// <summary>Letters with small digits as subscripts: B₁ is B_1.</summary>
    public static string Name(string letters)
    {
        string tex = "";
        for (int i = 0; i < letters.Length; i++)
        {
            if (!IsSubscript(letters[i])) { tex += letters[i] == '′' ? "'" : letters[i]; continue; }
            string digits = "";
            for (; i < letters.Length && IsSubscript(letters[i]); i++) digits += (char)('0' + Subscripts.IndexOf(letters[i], StringComparison.Ordinal));
            i--;
            tex += digits.Length == 1 ? "_" + digits : "_{" + digits + "}";
        }

        return tex;
    }

    public static bool IsSubscript(char sign) => Subscripts.Contains(sign, StringComparison.Ordinal);

    /// <summary>A unit inside mathematics.</summary>
    public static string Unit(Unit unit) => unit.IsAngle ? Sign(unit.Symbol) : @"\text{ " + Letters(unit) + "}" + Exponent(unit);

    /// <summary>A unit in running text, tied to the number before it.</summary>
    public static string UnitText(Unit unit) => "~" + Letters(unit) + (Exponent(unit) is { Length: > 0 } e ? "$" + e + "$" : "");

    private static string Letters(Unit unit) => unit.Symbol.TrimEnd('²', '³');

    private static string Exponent(Unit unit) => Letters(unit).Length == unit.Symbol.Length ? "" : Sign(unit.Symbol[Letters(unit).Length..]);
}
