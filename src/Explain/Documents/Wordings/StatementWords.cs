namespace Explain;

/// <summary>Statements that are words and not notation.</summary>
internal static partial class StatementWords
{
    [Phrase("statement.as-many")]
    public static partial Phrase AsMany(int number, Phrase what);

    [Phrase("statement.how-many")]
    public static partial Phrase HowMany(int number, Phrase what);

    [Phrase("statement.line")]
    public static partial Phrase Line(Line line);

    [Phrase("statement.most-of")]
    public static partial Phrase MostOf(Expr what, Symbol with);

    [Phrase("statement.increases")]
    public static partial Phrase Increases(Expr what, Symbol with);

    [Phrase("statement.decreases")]
    public static partial Phrase Decreases(Expr what, Symbol with);
}
