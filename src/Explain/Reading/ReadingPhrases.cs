namespace Explain;

/// <summary>What is said of files that cannot be read, or that are not laid out as a problem file.</summary>
internal static partial class ReadingPhrases
{
    [Phrase("error.unreadable-file.utf8")]
    internal static partial Phrase NotUtf8();

    [Phrase("remedy.utf8")]
    internal static partial Phrase SaveAsUtf8();

    [Phrase("error.unreadable-file.yaml")]
    internal static partial Phrase NotYaml();

    [Phrase("error.unreadable-file.json")]
    internal static partial Phrase NotJson();

    [Phrase("remedy.check-the-line")]
    internal static partial Phrase CheckTheLine();

    [Phrase("remedy.quote-colons")]
    internal static partial Phrase QuoteColons();

    [Phrase("error.unreadable-file.empty")]
    internal static partial Phrase EmptyFile();

    [Phrase("remedy.begin-with-a-topic")]
    internal static partial Phrase BeginWithATopic();

    [Phrase("error.unreadable-file.control")]
    internal static partial Phrase ControlCharacter();

    [Phrase("remedy.delete-it")]
    internal static partial Phrase DeleteIt();

    [Phrase("error.unreadable-file.tab")]
    internal static partial Phrase TabIndents();

    [Phrase("remedy.spaces")]
    internal static partial Phrase IndentWithSpaces();

    [Phrase("error.not-allowed-here.anchor")]
    internal static partial Phrase Anchor(string name);

    [Phrase("error.not-allowed-here.alias")]
    internal static partial Phrase Alias(string name);

    [Phrase("error.not-allowed-here.tag")]
    internal static partial Phrase Tag();

    [Phrase("error.not-allowed-here.directive")]
    internal static partial Phrase Directive();

    [Phrase("error.not-allowed-here.merge-key")]
    internal static partial Phrase MergeKey();

    [Phrase("error.not-allowed-here.second-document")]
    internal static partial Phrase SecondDocument();

    [Phrase("remedy.leave-it-out")]
    internal static partial Phrase LeaveItOut();

    [Phrase("remedy.write-it-out")]
    internal static partial Phrase WriteItOut();

    [Phrase("remedy.one-file-each")]
    internal static partial Phrase OneFileEach();

    [Phrase("error.duplicate-key")]
    internal static partial Phrase DuplicateKey(string key, int line);

    [Phrase("error.too-large.file")]
    internal static partial Phrase FileTooLarge(int limit);

    [Phrase("error.too-large.nesting")]
    internal static partial Phrase TooDeep(int limit);

    [Phrase("error.too-large.text")]
    internal static partial Phrase TextTooLong(Expr limit);

    [Phrase("error.too-large.entries")]
    internal static partial Phrase TooManyEntries(int limit);

    [Phrase("error.unknown-key")]
    internal static partial Phrase UnknownKey(string key);

    [Phrase("error.unknown-key.near")]
    internal static partial Phrase UnknownKeyNear(string key, string near);

    [Phrase("remedy.keys")]
    internal static partial Phrase Keys(string keys);

    [Phrase("error.unknown-key.letter")]
    internal static partial Phrase NotTheNextLetter(string key);

    [Phrase("remedy.letters-in-order")]
    internal static partial Phrase LettersInOrder();

    [Phrase("error.unknown-key.part")]
    internal static partial Phrase NoSuchPart(string letter);

    [Phrase("remedy.letters-of-find")]
    internal static partial Phrase LettersOfFind();

    [Phrase("error.wrong-shape")]
    internal static partial Phrase WrongShape(string key, Phrase found, Phrase wanted);

    [Phrase("error.wrong-shape.root")]
    internal static partial Phrase RootIsNoMap();

    [Phrase("error.wrong-shape.key")]
    internal static partial Phrase KeyIsNoText();

    [Phrase("remedy.key")]
    internal static partial Phrase WriteAKey();

    [Phrase("remedy.for-example")]
    internal static partial Phrase ForExample(string example);

    [Phrase("shape.text")]
    internal static partial Phrase AText();

    [Phrase("shape.list")]
    internal static partial Phrase AList();

    [Phrase("shape.map")]
    internal static partial Phrase AMap();

    [Phrase("shape.text-or-list")]
    internal static partial Phrase ATextOrAList();

    [Phrase("shape.text-or-map")]
    internal static partial Phrase ATextOrAMap();

    [Phrase("shape.any")]
    internal static partial Phrase AnyShape();
}
