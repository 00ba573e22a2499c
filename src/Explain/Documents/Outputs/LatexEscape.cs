using System.Text;

namespace Explain;

/// <summary>Makes text that LaTeX prints as it stands.</summary>
internal static class LatexEscape
{
    /// <summary>Signs that LaTeX prints in the text without help: letters of Europe, quotes, dashes.</summary>
    private const string AsTheyAre = "‘’“”–—";

    public static string Text(string text)
    {
        StringBuilder escaped = new(text.Length + 16);
        foreach (Rune rune in text.EnumerateRunes()) escaped.Append(One(rune));
        return escaped.ToString();
    }

    private static string One(Rune rune) => rune.Value switch
    {
        '\\' => @"\textbackslash{}",
        '{' => @"\{",
        '}' => @"\}",
        '$' or '&' or '#' or '%' or '_' => @"\" + (char)rune.Value,
        '^' => @"\textasciicircum{}",
        '~' => @"\textasciitilde{}",
        '<' or '>' or '|' => "$" + (char)rune.Value + "$",
        '"' => @"\symbol{34}",
        '`' => @"\textasciigrave{}",
        '\u00A0' or '\u202F' => "~",
        < ' ' or 0x7F => " ",
        < 0x80 => rune.ToString(),
        _ => Beyond(rune.ToString(), rune),
    };

    private static string Beyond(string sign, Rune rune)
    {
        if (TexSigns.Sign(sign) is var tex && tex != sign) return "$" + tex + "$";
        if (TexSigns.IsSubscript(sign[0])) return "$" + TexSigns.Name(sign) + "$";
        return IsEuropean(rune.Value) || AsTheyAre.Contains(sign, StringComparison.Ordinal) ? sign : "[U+" + rune.Value.ToString("X4", System.Globalization.CultureInfo.InvariantCulture) + "]";
    }

    /// <summary>Letters of Latin-1 and of Central Europe, which the kernel of LaTeX sets.</summary>
    private static bool IsEuropean(int code) => code is >= 0xC0 and <= 0x17E and not (0xD7 or 0xF7) && !Rare(code);

    private static bool Rare(int code) => code is 0xD0 or 0xDE or 0xF0 or 0xFE or 0x110 or 0x111 or 0x126 or 0x127 or 0x132 or 0x133 or 0x138 or 0x13F or 0x140 or 0x149 or 0x14A or 0x14B or 0x166 or 0x167;
}
