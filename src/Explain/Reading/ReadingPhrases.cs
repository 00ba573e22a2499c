namespace Explain;

/// <summary>What can be wrong with a file.</summary>
internal static partial class ReadingPhrases
{
    [Phrase("error.empty-file")]
    public static partial Phrase EmptyFile();

    [Phrase("error.not-yaml")]
    public static partial Phrase NotYaml();

    [Phrase("error.not-allowed")]
    public static partial Phrase NotAllowed();

    [Phrase("error.too-deep")]
    public static partial Phrase TooDeep();

    [Phrase("error.text-too-long")]
    public static partial Phrase TextTooLong();

    [Phrase("error.file-too-large")]
    public static partial Phrase FileTooLarge();

    [Phrase("error.key-is-not-text")]
    public static partial Phrase KeyIsNotText();

    [Phrase("error.duplicate-key")]
    public static partial Phrase DuplicateKey(string key);

    [Phrase("error.not-a-map")]
    public static partial Phrase NotAMap();

    [Phrase("error.unknown-key")]
    public static partial Phrase UnknownKey(string key);

    [Phrase("error.keys-are")]
    public static partial Phrase KeysAre(string keys);

    [Phrase("error.missing-key")]
    public static partial Phrase MissingKey(string key);

    [Phrase("error.wrong-shape")]
    public static partial Phrase WrongShape(string key);

    [Phrase("error.unknown-point")]
    public static partial Phrase UnknownPoint(string typed, string point, string points);

    [Phrase("error.say-where")]
    public static partial Phrase SayWhere(string point);

    [Phrase("error.given-twice")]
    public static partial Phrase GivenTwice(string typed, string other);

    [Phrase("error.keep-one")]
    public static partial Phrase KeepOne();

    [Phrase("error.missing-unit")]
    public static partial Phrase MissingUnit(string typed, string quantity);

    [Phrase("error.wrong-unit-for-angle")]
    public static partial Phrase WrongUnitForAngle(string typed, string quantity);

    [Phrase("error.wrong-unit-for-length")]
    public static partial Phrase WrongUnitForLength(string typed, string quantity);

    [Phrase("error.not-positive")]
    public static partial Phrase NotPositive(string typed, string quantity);

    [Phrase("error.cannot-find")]
    public static partial Phrase CannotFind(string typed);

    [Phrase("error.rounding")]
    public static partial Phrase CannotRound(string typed);
}
