namespace Explain;

/// <summary>What the topics say.</summary>
internal static partial class TopicPhrases
{
    [Phrase("caution.outdoors")]
    public static partial Phrase Outdoors();

    [Phrase("caution.outdoors-permission")]
    public static partial Phrase Permission();

    [Phrase("caution.strength")]
    public static partial Phrase Strength();

    [Phrase("caution.local-rules")]
    public static partial Phrase LocalRules();

    [Phrase("plan.find-the-rest")]
    public static partial Phrase FindTheRest();

    [Phrase("plan.count-first")]
    public static partial Phrase CountFirst();

    [Phrase("plan.sine-rule")]
    public static partial Phrase UseSineRule(Length side);

    [Phrase("plan.height")]
    public static partial Phrase Height(Point from, Line line);

    [Phrase("act.let-foot")]
    public static partial Phrase LetFoot(Point foot, Point from, Line line);

    [Phrase("title.draw-the-shortest-distance")]
    public static partial Phrase DrawTheShortestDistance();

    [Phrase("title.compare-with-the-height")]
    public static partial Phrase CompareWithTheHeight(Length side, Point from, Line line);

    [Phrase("title.compare-sides")]
    public static partial Phrase CompareSides(Length side, Length other);

    [Phrase("bounds.heading")]
    public static partial Phrase BoundsHeading();

    [Phrase("bounds.greatest")]
    public static partial Phrase Greatest();

    [Phrase("bounds.least")]
    public static partial Phrase Least();

    [Phrase("bounds.column")]
    public static partial Phrase Column(Symbol of);

    [Phrase("warning.several-solutions")]
    public static partial Phrase SeveralSolutions();
}
