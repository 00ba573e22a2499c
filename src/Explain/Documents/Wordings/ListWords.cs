namespace Explain;

/// <summary>What stands between the items of a list.</summary>
internal static partial class ListWords
{
    [Phrase("list.two-and")]
    public static partial Phrase TwoAnd();

    [Phrase("list.last-and")]
    public static partial Phrase LastAnd();

    [Phrase("list.two-or")]
    public static partial Phrase TwoOr();

    [Phrase("list.last-or")]
    public static partial Phrase LastOr();
}
