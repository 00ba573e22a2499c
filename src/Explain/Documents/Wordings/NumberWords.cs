namespace Explain;

/// <summary>Small counts in words.</summary>
internal static partial class NumberWords
{
    [Phrase("number.0")]
    public static partial Phrase None();

    [Phrase("number.1")]
    public static partial Phrase One();

    [Phrase("number.2")]
    public static partial Phrase Two();

    [Phrase("number.3")]
    public static partial Phrase Three();

    [Phrase("number.4")]
    public static partial Phrase Four();

    [Phrase("number.5")]
    public static partial Phrase Five();

    [Phrase("number.6")]
    public static partial Phrase Six();

    /// <summary>The word for a count; null from seven on, which is printed in digits.</summary>
    public static Phrase? For(int count) => count switch
    {
        0 => None(),
        1 => One(),
        2 => Two(),
        3 => Three(),
        4 => Four(),
        5 => Five(),
        6 => Six(),
        _ => null,
    };
}
