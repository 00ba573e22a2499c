namespace Explain.Tests.Solving.Medians;

/// <summary>What the topic of medians says.</summary>
internal static partial class MedianPhrases
{
    [Phrase("medians.plan")]
    public static partial Phrase Plan(Items<Symbol> medians);

    [Phrase("medians.straight")]
    public static partial Phrase Straight();
}
