namespace Explain;

/// <summary>A bearing is written with three figures before the point, and what rounds to a full turn is due north.</summary>
internal static class ThreeFigures
{
    private const int Figures = 3;
    private const string FullTurn = "360", North = "000";

    /// <summary>The value of a bearing as it is written; that of another quantity as it is.</summary>
    public static MathPiece Of(Symbol? symbol, MathPiece value) => symbol is Bearing ? Padded(value) : value;

    private static MathPiece Padded(MathPiece piece) => piece switch
    {
        MathNumber number => number with { Digits = Padded(number.Digits) },
        MathRow { Of: [var first, ..] } row => row with { Of = [Padded(first), .. row.Of.Skip(1)] },
        _ => piece,
    };

    private static string Padded(string digits)
    {
        string whole = digits.Split('.', ',')[0], padded = whole.PadLeft(Figures, '0');
        return (padded == FullTurn ? North : padded) + digits[whole.Length..];
    }
}
