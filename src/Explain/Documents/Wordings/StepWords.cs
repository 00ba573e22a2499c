namespace Explain;

/// <summary>The numbers of steps, and what a step does where it has no title of its own.</summary>
internal static partial class StepWords
{
    [Phrase("step.reference")]
    public static partial Phrase Steps(int n, Items<string> numbers);

    [Phrase("step.find")]
    public static partial Phrase Find(Expr what);

    [Phrase("step.find-directly")]
    public static partial Phrase FindDirectly(Expr what);

    [Phrase("step.long-formula")]
    public static partial Phrase LongFormula();

    [Phrase("step.find-sine")]
    public static partial Phrase FindSine(Corner angle);

    [Phrase("step.find-cosine")]
    public static partial Phrase FindCosine(Corner angle);

    [Phrase("step.find-tangent")]
    public static partial Phrase FindTangent(Corner angle);

    [Phrase("step.cases")]
    public static partial Phrase Cases();

    [Phrase("step.possible-values")]
    public static partial Phrase PossibleValues(Expr what);

    [Phrase("step.test-each")]
    public static partial Phrase TestEach();

    [Phrase("step.possible")]
    public static partial Phrase Possible();

    [Phrase("step.possible-too")]
    public static partial Phrase PossibleToo();

    [Phrase("step.not-possible")]
    public static partial Phrase NotPossible();

    [Phrase("step.not-asked")]
    public static partial Phrase NotAsked();

    [Phrase("step.each-case")]
    public static partial Phrase EachCase();

    [Phrase("step.write")]
    public static partial Phrase Write(Statement says);

    [Phrase("step.substitute")]
    public static partial Phrase Substitute();

    [Phrase("step.substitution")]
    public static partial Phrase Substitution();

    [Phrase("step.so")]
    public static partial Phrase So();

    [Phrase("step.or")]
    public static partial Phrase Or();

    [Phrase("step.from")]
    public static partial Phrase From(Items<ClaimId> steps, string says);

    [Phrase("step.case")]
    public static partial Phrase Case(string name, Statement assume);

    [Phrase("step.not-this-problem")]
    public static partial Phrase NotThisProblem();

    [Phrase("step.full-values")]
    public static partial Phrase FullValues();

    [Phrase("step.impossible")]
    public static partial Phrase Impossible();

    [Phrase("supposed.less")]
    public static partial Phrase Shorter(Expr than);

    [Phrase("supposed.at-most")]
    public static partial Phrase AtMost(Expr than);

    [Phrase("supposed.greater")]
    public static partial Phrase Longer(Expr than);

    [Phrase("supposed.at-least")]
    public static partial Phrase AtLeast(Expr than);

    [Phrase("supposed.exactly")]
    public static partial Phrase Exactly(Expr than);
}
