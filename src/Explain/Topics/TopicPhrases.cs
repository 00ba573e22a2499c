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

    [Phrase("plan.then")]
    public static partial Phrase PlanThen(Phrase first, Phrase next);

    [Phrase("plan.pythagoras")]
    public static partial Phrase PlanPythagoras(Items<Symbol> found);

    [Phrase("plan.ratios")]
    public static partial Phrase PlanRatios(Items<Symbol> found);

    [Phrase("plan.equation")]
    public static partial Phrase PlanEquation(Symbol letter);

    [Phrase("plan.equals")]
    public static partial Phrase PlanEquals(Items<Symbol> found);

    [Phrase("plan.find")]
    public static partial Phrase PlanFind(Items<Symbol> found);

    [Phrase("plan.angle-sum")]
    public static partial Phrase PlanAngleSum(Items<Symbol> found);

    [Phrase("plan.sine-rule-gives")]
    public static partial Phrase PlanSineRule(Items<Symbol> found);

    [Phrase("plan.cosine-rule")]
    public static partial Phrase PlanCosineRule(Items<Symbol> found);

    [Phrase("plan.count-first")]
    public static partial Phrase CountFirst();

    [Phrase("plan.sine-rule")]
    public static partial Phrase UseSineRule(Length side);

    [Phrase("plan.height")]
    public static partial Phrase Height(Line line);

    [Phrase("plan.side")]
    public static partial Phrase Side(Line line);

    [Phrase("act.let-foot")]
    public static partial Phrase LetFoot(Point foot, Point from, Line line);

    [Phrase("title.draw-the-shortest-distance")]
    public static partial Phrase DrawTheShortestDistance();

    [Phrase("title.compare-with-the-height")]
    public static partial Phrase CompareWithTheHeight(Length side, Point from, Line line);

    [Phrase("plan.herons-formula")]
    public static partial Phrase PlanHeronsFormula(Items<Symbol> found);

    [Phrase("plan.area-from-two-sides")]
    public static partial Phrase PlanAreaFromTwoSides(Items<Symbol> found);

    [Phrase("title.add-the-angles")]
    public static partial Phrase AddTheAngles();

    [Phrase("title.compare-longest")]
    public static partial Phrase CompareLongest(Length side);

    [Phrase("title.compare-sides")]
    public static partial Phrase CompareSides(Length side, Length other);

    [Phrase("title.finish-each-triangle")]
    public static partial Phrase FinishEachTriangle();

    [Phrase("title.each-triangle-again")]
    public static partial Phrase EachTriangleAgain();

    [Phrase("case.first-triangle")]
    public static partial Phrase FirstTriangle(Point moving);

    [Phrase("case.second-triangle")]
    public static partial Phrase SecondTriangle(Point moving);

    [Phrase("case.positions")]
    public static partial Phrase TwoPositions(Point moving);

    [Phrase("remark.calculator")]
    public static partial Phrase CalculatorShowsOne();

    [Phrase("bounds.heading")]
    public static partial Phrase BoundsHeading();

    [Phrase("bounds.upper")]
    public static partial Phrase UpperBounds();

    [Phrase("bounds.lower")]
    public static partial Phrase LowerBounds();

    [Phrase("remark.smallest-angle")]
    public static partial Phrase Smallest(Symbol side, Items<Symbol> others, Expr length);

    [Phrase("remark.largest-angle")]
    public static partial Phrase Largest(Symbol side, Items<Symbol> others, Expr length);

    [Phrase("remark.unrounded")]
    public static partial Phrase Unrounded(Symbol of, ClaimId step);

    [Phrase("heading.distances")]
    public static partial Phrase Distances(Items<Symbol> of);

    [Phrase("heading.distance-to-line")]
    public static partial Phrase DistanceTo(Point from, Line line);

    [Phrase("remark.same-holds")]
    public static partial Phrase SameHolds(Items<Symbol> others, Items<Phrase> bounds);

    [Phrase("remark.is-between")]
    public static partial Phrase IsBetween(Symbol of, Expr lower, Expr upper);

    [Phrase("what-if.shorter-or-longer")]
    public static partial Phrase ShorterOrLonger(Length side);

    [Phrase("what-if.does-not-reach")]
    public static partial Phrase DoesNotReach(Length side, Line line);

    [Phrase("what-if.with-a-right-angle")]
    public static partial Phrase WithARightAngle(Point corner);

    [Phrase("remark.most-of")]
    public static partial Phrase MostOf(Expr what, Symbol with);

    [Phrase("bounds.examined")]
    public static partial Phrase Examined(Symbol what, Items<Statement> least, Items<Statement> greatest);

    [Phrase("bounds.greatest")]
    public static partial Phrase Greatest();

    [Phrase("bounds.least")]
    public static partial Phrase Least();

    [Phrase("bounds.column")]
    public static partial Phrase Column(Symbol of);

    [Phrase("warning.no-exact-form")]
    public static partial Phrase NoExactForm(string of);

    [Phrase("warning.several-solutions")]
    public static partial Phrase SeveralSolutions();

    [Phrase("topic.triangle.figure")]
    public static partial Phrase TriangleFigure();

    [Phrase("topic.triangle.given")]
    public static partial Phrase TriangleGiven();

    [Phrase("topic.triangle.find")]
    public static partial Phrase TriangleFind();

    [Phrase("topic.distance.figure")]
    public static partial Phrase DistanceFigure();

    [Phrase("topic.distance.given")]
    public static partial Phrase DistanceGiven();

    [Phrase("topic.distance.find")]
    public static partial Phrase DistanceFind();
}
