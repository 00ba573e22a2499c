namespace Explain;

/// <summary>What is said of problems of no kind that is known, and of those that are too much work.</summary>
internal static partial class SolvingPhrases
{
    [Phrase("error.not-supported.no-topic")]
    public static partial Phrase NoTopic();

    [Phrase("error.too-large.work")]
    public static partial Phrase TooMuchWork();
}
