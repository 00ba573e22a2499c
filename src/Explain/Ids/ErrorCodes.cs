namespace Explain;

/// <summary>The codes of errors and warnings. They never change their meaning and are never used again.</summary>
public static class ErrorCodes
{
    /// <summary>Not UTF-8, not YAML, empty, a control character, a tab in the indentation.</summary>
    public const string UnreadableFile = "unreadable-file";

    /// <summary>An anchor, an alias, a tag, a merge key or a second document.</summary>
    public const string NotAllowedHere = "not-allowed-here";

    /// <summary>A key that stands twice in one map.</summary>
    public const string DuplicateKey = "duplicate-key";

    /// <summary>A file, a nesting, a text, a number, shares or points beyond a limit.</summary>
    public const string TooLarge = "too-large";

    /// <summary>A key that does not exist.</summary>
    public const string UnknownKey = "unknown-key";

    /// <summary>A key that is needed and is not there.</summary>
    public const string MissingKey = "missing-key";

    /// <summary>A list where a map belongs, and the like.</summary>
    public const string WrongShape = "wrong-shape";

    /// <summary>A topic that does not exist.</summary>
    public const string UnknownTopic = "unknown-topic";

    /// <summary>No topic is stated, and none or several accept the problem.</summary>
    public const string WhichTopic = "which-topic";

    /// <summary>A statement, a quantity or a thing to find that cannot be read.</summary>
    public const string UnreadableStatement = "unreadable-statement";

    /// <summary>A point that the figure does not mention.</summary>
    public const string UnknownPoint = "unknown-point";

    /// <summary>The same thing is asked for twice.</summary>
    public const string FoundTwice = "found-twice";

    /// <summary>A number or a value that cannot be read.</summary>
    public const string UnreadableNumber = "unreadable-number";

    /// <summary>A length or a count that is not more than 0.</summary>
    public const string NotPositive = "not-positive";

    /// <summary>A value without a unit.</summary>
    public const string MissingUnit = "missing-unit";

    /// <summary>A unit of another kind of quantity.</summary>
    public const string WrongUnit = "wrong-unit";

    /// <summary>A unit that does not exist.</summary>
    public const string UnknownUnit = "unknown-unit";

    /// <summary>The same quantity is given twice.</summary>
    public const string GivenTwice = "given-twice";

    /// <summary>Three lengths that make no triangle.</summary>
    public const string NoTriangle = "no-triangle";

    /// <summary>Three lengths that make a flat triangle.</summary>
    public const string FlatTriangle = "flat-triangle";

    /// <summary>A side that is too short to reach.</summary>
    public const string DoesNotReach = "does-not-reach";

    /// <summary>Two rays that do not meet.</summary>
    public const string RaysDoNotMeet = "rays-do-not-meet";

    /// <summary>An angle that no figure has.</summary>
    public const string ImpossibleAngle = "impossible-angle";

    /// <summary>Givens that cannot hold together.</summary>
    public const string Contradiction = "contradiction";

    /// <summary>With measurements as uncertain as these there may be no such figure, so a quantity has no bounds.</summary>
    public const string NoBounds = "no-bounds";

    /// <summary>Givens that do not determine what is asked for.</summary>
    public const string NotEnoughData = "not-enough-data";

    /// <summary>An arrangement that the figure leaves open.</summary>
    public const string ArrangementNotFixed = "arrangement-not-fixed";

    /// <summary>A method that does not apply to the figure.</summary>
    public const string MethodDoesNotApply = "method-does-not-apply";

    /// <summary>A problem that this version does not solve.</summary>
    public const string NotSupported = "not-supported";

    /// <summary>More marks than there are steps to credit.</summary>
    public const string TooFewSteps = "too-few-steps";

    /// <summary>No variant satisfies what is asked of it.</summary>
    public const string NoVariant = "no-variant";

    /// <summary>An answer of another kind than the question asks for.</summary>
    public const string WrongKindOfAnswer = "wrong-kind-of-answer";

    /// <summary>A warning: data given but not used.</summary>
    public const string UnusedGiven = "unused-given";

    /// <summary>A warning: an answer asked to more figures than the accuracy supports.</summary>
    public const string MoreFiguresThanData = "more-figures-than-data";

    /// <summary>A warning: more than one solution.</summary>
    public const string SeveralSolutions = "several-solutions";

    /// <summary>A warning: an exact answer is asked for where no exact form exists.</summary>
    public const string NoExactForm = "no-exact-form";

    /// <summary>Every code of an error, in the order of the documentation.</summary>
    public static Items<string> All { get; } =
    [
        UnreadableFile, NotAllowedHere, DuplicateKey, TooLarge, UnknownKey, MissingKey, WrongShape, UnknownTopic, WhichTopic,
        UnreadableStatement, UnknownPoint, FoundTwice,
        UnreadableNumber, NotPositive, MissingUnit, WrongUnit, UnknownUnit, GivenTwice,
        NoTriangle, FlatTriangle, DoesNotReach, RaysDoNotMeet, ImpossibleAngle, Contradiction, NotEnoughData, ArrangementNotFixed, MethodDoesNotApply, NotSupported,
        TooFewSteps, NoVariant, WrongKindOfAnswer,
    ];

    /// <summary>Every code of a warning.</summary>
    public static Items<string> Warnings { get; } = [UnusedGiven, MoreFiguresThanData, SeveralSolutions, NoExactForm];
}
