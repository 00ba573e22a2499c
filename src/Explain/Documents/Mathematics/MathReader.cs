namespace Explain;

/// <summary>Lays out numbers that are text already: an exact number, or a measurement as its author typed it.</summary>
internal static class MathReader
{
    public static MathPiece Read(string text)
    {
        int at = 0;
        return Row(text, ref at);
    }

    private static MathPiece Row(string text, ref int at)
    {
        List<MathPiece> row = [];
        MathLevel level = MathLevel.Product;
        while (at < text.Length && text[at] != ')')
        {
            if (text[at] == '/' && row.Count > 0)
            {
                at++;
                Divide(row, Next(text, ref at, []));
                continue;
            }

            MathPiece piece = Next(text, ref at, row);
            if (piece is MathSign) level = MathLevel.Sum;
            row.Add(piece);
        }

        return row.Count == 1 ? row[0] : new MathRow([.. row], level);
    }

    /// <summary>What stands before the stroke, back to a sign or a space, over what stands behind it.</summary>
    private static void Divide(List<MathPiece> row, MathPiece bottom)
    {
        int start = row.FindLastIndex(p => p is MathSign or MathWords) + 1;
        MathPiece[] top = [.. row.Skip(start)];
        row.RemoveRange(start, row.Count - start);
        row.Add(new MathFraction(top is [MathBrackets whole] ? whole.Of : top is [var one] ? one : new MathRow([.. top], MathLevel.Product), bottom is MathBrackets b ? b.Of : bottom));
    }

    private static MathPiece Next(string text, ref int at, List<MathPiece> before)
    {
        if (char.IsAsciiDigit(text[at])) return new MathNumber(Take(text, ref at, c => char.IsAsciiDigit(c) || c == '.'), Continues: false);
        if (char.IsAsciiLetter(text[at])) return Word(Take(text, ref at, char.IsAsciiLetter));
        char sign = text[at++];
        switch (sign)
        {
            case '(':
                MathPiece inside = Row(text, ref at);
                at = int.Min(at + 1, text.Length);
                return new MathBrackets(inside);
            case '√' when at < text.Length:
                return new MathRoot(Next(text, ref at, []) is var under && under is MathBrackets b ? b.Of : under);
            case '²' or '³' when before.Count > 0:
                MathPiece squared = before[^1];
                before.RemoveAt(before.Count - 1);
                return new MathPower(squared, sign == '²' ? 2 : 3);
            case ' ' when at < text.Length && text[at] is '+' or '−' or '-' or '±':
                return Between(text, ref at);
            case ' ' when before.Count > 0 && at < text.Length && char.IsAsciiLetter(text[at]):
                return Next(text, ref at, before);
            default:
                return Unit.Parse(sign.ToString()) is { IsAngle: true } unit ? new MathUnit(unit) : sign == ' ' ? new MathWords(" ") : new MathMark(sign == '-' ? "−" : sign.ToString());
        }
    }

    private static MathSign Between(string text, ref int at)
    {
        string sign = text[at++] == '-' ? "−" : text[at - 1].ToString();
        if (at < text.Length && text[at] == ' ') at++;
        return new(sign);
    }

    private static MathPiece Word(string word) => Unit.Parse(word) is { } unit ? new MathUnit(unit) : new MathName(word);

    private static string Take(string text, ref int at, Func<char, bool> takes)
    {
        int start = at;
        while (at < text.Length && takes(text[at])) at++;
        return text[start..at];
    }
}
