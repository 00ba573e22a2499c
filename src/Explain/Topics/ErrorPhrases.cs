namespace Explain;

/// <summary>What can be wrong with the geometry of a problem.</summary>
internal static partial class ErrorPhrases
{
    [Phrase("error.no-triangle")]
    public static partial Phrase NoTriangle(Items<Statement> sides, Expr first, Expr second, Value sum, Value longest, Point from, Point to);

    [Phrase("error.flat-triangle")]
    public static partial Phrase FlatTriangle(Items<Statement> sides, Expr first, Expr second, Value sum, Point corner, Line side);

    [Phrase("error.no-triangle.measures")]
    public static partial Phrase NoTriangleWith(Items<Statement> given);

    [Phrase("error.no-triangle.sine")]
    public static partial Phrase NoSuchSine(Items<Statement> given, Angle angle, Value value);

    [Phrase("error.no-triangle.side")]
    public static partial Phrase NoSuchSide(Items<Statement> given, Symbol side, Value value);

    [Phrase("remedy.check-measurements")]
    public static partial Phrase CheckMeasurements();

    [Phrase("remedy.check-lengths")]
    public static partial Phrase CheckLengths();

    [Phrase("error.rays-do-not-meet")]
    public static partial Phrase RaysDoNotMeet(Point from, Point and, Symbol first, Symbol second, Expr one, Expr other, Value sum);

    [Phrase("remedy.other-direction")]
    public static partial Phrase OtherDirection(Expr larger, Value rest);

    [Phrase("error.does-not-reach")]
    public static partial Phrase DoesNotReach(Items<Statement> given, Point from, Line line, Expr product, Value height, Symbol side);

    [Phrase("error.does-not-reach.not-the-longest")]
    public static partial Phrase NotTheLongest(Items<Statement> given, Symbol side, Symbol beside);

    [Phrase("remedy.at-least")]
    public static partial Phrase AtLeast(Symbol side, Value least);

    [Phrase("remedy.at-least.rounded-up")]
    public static partial Phrase AtLeastRoundedUp(Symbol side, Expr least);

    [Phrase("remedy.longer-than")]
    public static partial Phrase LongerThan(Symbol side, Value than);

    [Phrase("error.not-enough-data")]
    public static partial Phrase NotEnoughData(Symbol wanted);

    [Phrase("error.not-enough-data.length")]
    public static partial Phrase NoLength(Symbol wanted);

    [Phrase("remedy.give-a-length")]
    public static partial Phrase GiveALength(Polygon triangle, Items<Symbol> lengths);

    [Phrase("remedy.give-more")]
    public static partial Phrase GiveMore();

    [Phrase("error.contradiction")]
    public static partial Phrase Contradiction(Statement given, Phrase others, Phrase from, Symbol of, Value value);

    [Phrase("error.contradiction.angles")]
    public static partial Phrase ContradictionOfAngles(Statement given, Phrase others, Polygon triangle, Expr first, Expr second, Expr third, Value sum);

    [Phrase("error.contradiction.figure")]
    public static partial Phrase ContradictionOfFigure(Polygon triangle, Expr first, Expr second, Expr third, Value sum);

    [Phrase("error.impossible-angle.letters")]
    public static partial Phrase LettersGiveNoFigure(Statement equation, Statement solution, Items<Statement> facts);

    [Phrase("remedy.expressions")]
    public static partial Phrase CheckTheExpressions();

    [Phrase("remedy.figure")]
    public static partial Phrase CheckTheFigure();

    [Phrase("remedy.remove-one")]
    public static partial Phrase RemoveOne();

    [Phrase("remedy.remove-one.of-three")]
    public static partial Phrase RemoveOneOfThree(Phrase from, Symbol of, Value value);

    [Phrase("place.lines")]
    public static partial Phrase OnLines(Items<int> lines);

    [Phrase("place.facts")]
    public static partial Phrase OnFacts(Items<Statement> facts);

    [Phrase("error.which-topic")]
    public static partial Phrase WhichTopic(string topics);

    [Phrase("remedy.name-the-topic")]
    public static partial Phrase NameTheTopic();

    [Phrase("error.unknown-topic")]
    public static partial Phrase UnknownTopic(string typed);

    [Phrase("error.not-supported.letters")]
    public static partial Phrase NotInLetters(Symbol of, string typed);

    [Phrase("remedy.write-a-number")]
    public static partial Phrase WriteANumber();

    [Phrase("error.not-supported.topic")]
    public static partial Phrase TopicNotSupported(string topic);

    [Phrase("error.method-does-not-apply.shares")]
    public static partial Phrase NoInscribedCircle(Polygon shape, Symbol first, Symbol second);

    [Phrase("remedy.shape-with-a-circle")]
    public static partial Phrase UseAShapeWithACircle();

    [Phrase("error.not-supported.inwards")]
    public static partial Phrase PointsInwards(Items<Point> corners, Polygon shape);

    [Phrase("error.arrangement-not-fixed.inside")]
    public static partial Phrase SomewhereInside(Point point, Polygon shape);

    [Phrase("remedy.say-its-place")]
    public static partial Phrase SayItsPlace(Point point);

    [Phrase("remedy.replace-the-shape")]
    public static partial Phrase ReplaceTheShape();

    [Phrase("error.no-bounds")]
    public static partial Phrase NoBounds(Symbol wanted);

    [Phrase("error.no-bounds.angles")]
    public static partial Phrase NoBoundsOfAngles(Symbol wanted, Symbol first, Symbol second, Expr sum);

    [Phrase("error.no-bounds.exact")]
    public static partial Phrase NoTolerance(Symbol wanted);

    [Phrase("error.measure-more-closely")]
    public static partial Phrase MeasureMoreClosely();

    [Phrase("error.write-a-tolerance")]
    public static partial Phrase WriteATolerance();

    [Phrase("error.arrangement-not-fixed")]
    public static partial Phrase NotFixed(int n);

    [Phrase("error.say-which-side")]
    public static partial Phrase SayWhichSide();

    [Phrase("error.not-supported")]
    public static partial Phrase NotSupported(string what);

    [Phrase("remedy.see-topics")]
    public static partial Phrase SeeTopics();
}
