using System.Globalization;
using System.Text;

namespace Explain;

/// <summary>Prints mathematics as TeX that needs amsmath and amssymb only.</summary>
internal static class MathTex
{
    /// <summary>The piece without dollar signs.</summary>
    public static string Write(MathPiece piece)
    {
        StringBuilder tex = new();
        foreach (string token in Tokens(piece))
        {
            if (token.Length > 0 && char.IsAsciiLetterOrDigit(token[0]) && EndsInCommand(tex)) tex.Append(' ');
            tex.Append(token);
        }

        return tex.ToString();
    }

    private static IEnumerable<string> Tokens(MathPiece piece) => piece switch
    {
        MathRow r => r.Of.SelectMany(Tokens),
        MathName n => [TexSigns.Name(n.Letters)],
        MathWords w => [@"\text{" + LatexEscape.Text(w.Text) + "}"],
        MathNumber n => [Thousands.Group(n.Digits, @"\,").Replace(",", "{,}", StringComparison.Ordinal).Replace(@"\{,}", @"\,", StringComparison.Ordinal).Replace('−', '-'), n.Continues ? @"\ldots" : ""],
        MathUnit u => [TexSigns.Unit(u.Is)],
        MathSign s => [TexSigns.Sign(s.Sign)],
        MathJoin j => [@"\quad\text{" + LatexEscape.Text(j.Word) + @"}\quad"],
        MathMark m => [TexSigns.Sign(m.Sign)],
        MathFraction f => [(IsSmall(f) ? @"\tfrac{" : @"\frac{") + Inside(f.Top) + "}{" + Inside(f.Bottom) + "}"],
        MathRoot r => [@"\sqrt{" + Write(r.Of) + "}"],
        MathPower p => [.. Tokens(p.Base), "^" + Exponent(p.Exponent)],
        MathFunction f => [@"\" + f.Name + (f.IsInverse ? "^{-1}" : ""), .. Tokens(f.Of)],
        MathBrackets b => [IsTall(b.Of) ? @"\left(" : "(", .. Tokens(b.Of), IsTall(b.Of) ? @"\right)" : ")"],
        _ => throw new ArgumentException(piece.GetType().Name, nameof(piece)),
    };

    /// <summary>A part of a fraction; a fraction in it stays as large as it was.</summary>
    private static string Inside(MathPiece part) => Write(part).Replace(@"\frac{", @"\dfrac{", StringComparison.Ordinal);

    /// <summary>Whether a fraction or a root stands in it, so that one line of text does not hold it well.</summary>
    public static bool IsTall(MathPiece piece) => piece switch
    {
        MathRow r => r.Of.Any(IsTall),
        MathFraction f => !IsSmall(f),
        MathRoot => true,
        MathPower p => IsTall(p.Base),
        MathFunction f => IsTall(f.Of),
        MathBrackets b => IsTall(b.Of),
        _ => false,
    };

    private static bool IsSmall(MathFraction fraction) => fraction is { Top: MathNumber { Digits.Length: 1, Continues: false }, Bottom: MathNumber { Digits.Length: 1, Continues: false } };

    private static string Exponent(int exponent)
    {
        string digits = exponent.ToString(CultureInfo.InvariantCulture);
        return digits.Length == 1 ? digits : "{" + digits + "}";
    }

    private static bool EndsInCommand(StringBuilder tex)
    {
        int at = tex.Length;
        while (at > 0 && char.IsAsciiLetter(tex[at - 1])) at--;
        return at > 0 && at < tex.Length && tex[at - 1] == '\\';
    }
}
