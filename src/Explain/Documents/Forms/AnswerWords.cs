namespace Explain;

/// <summary>Answers, and how they were rounded.</summary>
internal static partial class AnswerWords
{
    [Phrase("answer.lead")]
    public static partial Phrase Lead();

    [Phrase("answer.lead-letter")]
    public static partial Phrase LeadLetter(string letter);

    [Phrase("answer.cases")]
    public static partial Phrase Cases(int n);

    [Phrase("answer.is")]
    public static partial Phrase Is(Symbol what, string value);

    [Phrase("answer.is-about")]
    public static partial Phrase IsAbout(Symbol what, string value);

    [Phrase("answer.distance-to-line")]
    public static partial Phrase DistanceToLine(Point from, Line line);

    [Phrase("answer.with")]
    public static partial Phrase With(string first, string second);

    [Phrase("answer.between")]
    public static partial Phrase Between(string what, string bounds);

    [Phrase("answer.bounds")]
    public static partial Phrase Bounds(string lower, string upper);

    [Phrase("answer.range")]
    public static partial Phrase Range(string lower, string upper);

    [Phrase("answer.so-between")]
    public static partial Phrase SoBetween(string what, string bounds);

    [Phrase("answer.within")]
    public static partial Phrase Within(string answer, string margin);

    [Phrase("answer.named")]
    public static partial Phrase Named(string what, string name);
}
