namespace Explain;

/// <summary>What is said of problems whose entries do not go together or are of the wrong kind.</summary>
internal static partial class ProblemPhrases
{
    [Phrase("error.unreadable-number.not-measured")]
    public static partial Phrase NotMeasured(string quantity, string typed);

    [Phrase("remedy.write-the-measurement")]
    public static partial Phrase WriteTheMeasurement();

    [Phrase("error.missing-unit")]
    internal static partial Phrase NoUnit(string quantity, string typed);

    [Phrase("error.missing-unit.margin")]
    internal static partial Phrase NoUnitAtAll(string typed);

    [Phrase("remedy.missing-unit")]
    internal static partial Phrase WriteAUnit(string instead);

    [Phrase("error.wrong-unit")]
    internal static partial Phrase WrongUnit(string typed, Phrase found, string quantity, Phrase kind);

    [Phrase("error.wrong-unit.margin")]
    internal static partial Phrase NeitherLengthNorAngle(string typed);

    [Phrase("error.wrong-unit.rounding")]
    internal static partial Phrase RoundingOfAnotherKind(string typed, string kind);

    [Phrase("remedy.wrong-unit.length-or-angle")]
    internal static partial Phrase WriteAnAngleOrTheLength(string angle, Point from, Point to, string length);

    [Phrase("remedy.wrong-unit.length")]
    internal static partial Phrase WriteALength(string number);

    [Phrase("error.not-positive")]
    internal static partial Phrase NotPositive(string quantity, string typed);

    [Phrase("error.not-positive.margin")]
    internal static partial Phrase MarginNotPositive(string typed);

    [Phrase("error.not-positive.count")]
    internal static partial Phrase CountNotPositive(string typed);

    [Phrase("remedy.not-positive")]
    internal static partial Phrase MoreThanNothing();

    [Phrase("error.impossible-angle.zero")]
    internal static partial Phrase AngleNotPositive(string quantity, string typed);

    [Phrase("error.impossible-angle.large")]
    internal static partial Phrase AngleTooLarge(string quantity, string typed);

    [Phrase("error.impossible-angle.reflex")]
    internal static partial Phrase NotReflex(string quantity, string typed);

    [Phrase("error.impossible-angle.bearing")]
    internal static partial Phrase NoSuchBearing(string quantity, string typed);

    [Phrase("remedy.impossible-angle")]
    internal static partial Phrase CheckTheAngle();

    [Phrase("remedy.impossible-angle.bearing")]
    internal static partial Phrase BearingsAre();

    [Phrase("remedy.impossible-angle.reflex")]
    internal static partial Phrase SayReflex(string quantity);

    [Phrase("remedy.impossible-angle.straight")]
    internal static partial Phrase SayInLine(Items<Point> points);

    [Phrase("error.unreadable-number.count")]
    internal static partial Phrase NotACount(string typed);

    [Phrase("remedy.count")]
    internal static partial Phrase WriteACount();

    [Phrase("error.too-large.shares")]
    internal static partial Phrase TooManyShares(Expr shares, int limit);

    [Phrase("error.too-large.marks")]
    internal static partial Phrase TooManyMarks(string typed, int limit);

    [Phrase("error.too-large.points")]
    internal static partial Phrase TooManyPoints(int points, int limit);

    [Phrase("remedy.too-large")]
    internal static partial Phrase RaiseTheLimit();

    [Phrase("remedy.first-cut")]
    internal static partial Phrase WriteAFirstCut();

    [Phrase("error.unreadable-method")]
    internal static partial Phrase NotAMethod(string typed);

    [Phrase("remedy.methods")]
    internal static partial Phrase Methods(string methods);

    [Phrase("error.unreadable-goal")]
    internal static partial Phrase NotAGoal(string typed);

    [Phrase("error.unreadable-rounding")]
    internal static partial Phrase NotARounding(string typed);

    [Phrase("remedy.roundings")]
    internal static partial Phrase Roundings();

    [Phrase("remedy.margin")]
    internal static partial Phrase WriteAMargin();

    [Phrase("error.unreadable-scale")]
    internal static partial Phrase NotAScale(string typed);

    [Phrase("remedy.scale")]
    internal static partial Phrase WriteAScale();

    [Phrase("error.missing-key")]
    internal static partial Phrase Missing(string key);

    [Phrase("remedy.missing-key.figure")]
    internal static partial Phrase SayTheFigure();

    [Phrase("remedy.missing-key.find")]
    internal static partial Phrase SayWhatToFind();

    [Phrase("error.unknown-point")]
    internal static partial Phrase UnknownPoint(string typed, Point point, Items<Point> points);

    [Phrase("remedy.unknown-point")]
    internal static partial Phrase SayWhereItIs(string instead, Point point);

    [Phrase("remedy.unknown-point.new")]
    internal static partial Phrase SayWhereTheNewPointIs(Point point);

    [Phrase("error.given-twice")]
    internal static partial Phrase GivenTwice(Symbol again, string typed, Symbol first, string value, int line);

    [Phrase("error.given-twice.other-name")]
    internal static partial Phrase GivenTwiceOtherName(Symbol again, string typed, Symbol first, string value, int line, Phrase kind);

    [Phrase("error.given-twice.program")]
    internal static partial Phrase GivenTwiceInProgram(Symbol again, string typed, Symbol first, string value);

    [Phrase("error.given-twice.word")]
    internal static partial Phrase WordGivenTwice(string key);

    [Phrase("error.given-twice.margin")]
    internal static partial Phrase MarginTwice(string typed);

    [Phrase("error.given-twice.shares")]
    internal static partial Phrase SharesTwice(string shares);

    [Phrase("kind.same-length")]
    internal static partial Phrase SameLength();

    [Phrase("kind.same-angle")]
    internal static partial Phrase SameAngle();

    [Phrase("kind.same-quantity")]
    internal static partial Phrase SameQuantity();

    [Phrase("remedy.keep-one")]
    internal static partial Phrase KeepOne();

    [Phrase("error.found-twice")]
    internal static partial Phrase FoundTwice(string typed);

    [Phrase("error.found-twice.line")]
    internal static partial Phrase FoundTwiceOnLine(string typed, int line);

    [Phrase("remedy.find-once")]
    internal static partial Phrase FindOnce();
}
