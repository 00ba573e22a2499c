using System.Globalization;

namespace Explain;

/// <summary>Prints mathematics in one line of Unicode: PT = 120 × sin 71° ÷ sin 47° = 155.140… m.</summary>
internal static class MathPlain
{
    private const string Superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    public static string Write(MathPiece piece) => piece switch
    {
        MathRow r => string.Concat(r.Of.Select(Write)),
        MathName n => n.Letters,
        MathWords w => w.Text,
        MathNumber n => Thousands.Group(n.Digits, "\u202F") + (n.Continues ? "…" : ""),
        MathUnit { Is.IsAngle: true } u => u.Is.Symbol,
        MathUnit u => " " + u.Is.Symbol,
        MathSign s => " " + s.Sign + " ",
        MathMark m => m.Sign,
        MathJoin j => ", " + j.Word + " ",
        MathFraction f => Vulgar(f) ?? (IsNumber(f.Top) && f.Bottom is MathNumber ? Held(f.Top, MathLevel.Product) + "/" + Write(f.Bottom) : null) ?? Held(f.Top, MathLevel.Product) + " ÷ " + Held(f.Bottom, MathLevel.Atom),
        MathRoot r => "√" + (r.Of is MathNumber { Continues: false } or MathName { Letters.Length: 1 } ? Write(r.Of) : "(" + Write(r.Of) + ")"),
        MathPower p => Write(p.Base) + string.Concat(p.Exponent.ToString(CultureInfo.InvariantCulture).Select(d => Superscripts[d - '0'])),
        MathFunction f => f.Name + (f.IsInverse ? "⁻¹" : "") + (f.Of is MathBrackets or MathMark ? "" : " ") + Write(f.Of),
        MathBrackets b => "(" + Write(b.Of) + ")",
        _ => throw new ArgumentException(piece.GetType().Name, nameof(piece)),
    };

    private static string Held(MathPiece piece, MathLevel least) => piece.Level < least ? "(" + Write(piece) + ")" : Write(piece);

    private static string? Vulgar(MathFraction fraction) => (fraction.Top, fraction.Bottom) switch
    {
        (MathNumber { Digits: "1", Continues: false }, MathNumber { Digits: "2", Continues: false }) => "½",
        (MathNumber { Digits: "1", Continues: false }, MathNumber { Digits: "4", Continues: false }) => "¼",
        (MathNumber { Digits: "3", Continues: false }, MathNumber { Digits: "4", Continues: false }) => "¾",
        (MathNumber { Continues: false } top, MathNumber { Continues: false } bottom) when IsWhole(top) && IsWhole(bottom) && top.Digits.Length + bottom.Digits.Length <= 4 => top.Digits + "/" + bottom.Digits,
        _ => null,
    };

    private static bool IsWhole(MathNumber number) => number.Digits.All(char.IsAsciiDigit);

    /// <summary>Whether it is an exact number: digits and roots, and no quantity.</summary>
    private static bool IsNumber(MathPiece piece) => piece switch
    {
        MathNumber { Continues: false } or MathMark { Sign: "π" } or MathSign => true,
        MathRoot root => IsNumber(root.Of),
        MathBrackets brackets => IsNumber(brackets.Of),
        MathRow row => row.Of.All(IsNumber),
        _ => false,
    };
}
