namespace Explain;

/// <summary>What can be wrong with the geometry of a problem.</summary>
internal static partial class ErrorPhrases
{
    [Phrase("error.no-triangle")]
    public static partial Phrase NoTriangle(Items<Statement> given, Expr longest, Expr sum);

    [Phrase("error.flat-triangle")]
    public static partial Phrase FlatTriangle(Items<Statement> given);

    [Phrase("error.check-lengths")]
    public static partial Phrase CheckLengths();

    [Phrase("error.rays-do-not-meet")]
    public static partial Phrase RaysDoNotMeet(Symbol first, Symbol second, Expr sum);

    [Phrase("error.other-direction")]
    public static partial Phrase OtherDirection();

    [Phrase("error.does-not-reach")]
    public static partial Phrase DoesNotReach(Items<Statement> given, Symbol side, Expr height);

    [Phrase("error.check-measurements")]
    public static partial Phrase CheckMeasurements();

    [Phrase("error.not-enough-data")]
    public static partial Phrase NotEnoughData(Symbol wanted);

    [Phrase("error.give-a-length")]
    public static partial Phrase GiveALength();

    [Phrase("error.give-more")]
    public static partial Phrase GiveMore();

    [Phrase("error.contradiction")]
    public static partial Phrase Contradiction(Statement given, Symbol of, Expr value);

    [Phrase("error.remove-one")]
    public static partial Phrase RemoveOne();

    [Phrase("error.which-topic")]
    public static partial Phrase WhichTopic(string topics);

    [Phrase("error.name-the-topic")]
    public static partial Phrase NameTheTopic();

    [Phrase("error.unknown-topic-here")]
    public static partial Phrase UnknownTopic(string typed);

    [Phrase("error.not-supported")]
    public static partial Phrase NotSupported(string what);

    [Phrase("error.see-topics")]
    public static partial Phrase SeeTopics();
}
