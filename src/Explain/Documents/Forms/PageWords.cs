namespace Explain;

/// <summary>Headings and leads of a page.</summary>
internal static partial class PageWords
{
    [Phrase("page.question")]
    public static partial Phrase Question();

    [Phrase("page.letter")]
    public static partial Phrase Letter(string letter);

    [Phrase("page.figure")]
    public static partial Phrase Figure();

    [Phrase("page.name")]
    public static partial Phrase Name(string of, string name);

    [Phrase("page.given")]
    public static partial Phrase Given();

    [Phrase("page.to-find")]
    public static partial Phrase ToFind();

    [Phrase("page.assumptions")]
    public static partial Phrase Assumptions(int n);

    [Phrase("page.caution")]
    public static partial Phrase Caution();

    [Phrase("page.plan")]
    public static partial Phrase Plan();

    [Phrase("page.existence")]
    public static partial Phrase Existence();

    [Phrase("page.construction")]
    public static partial Phrase Construction();

    [Phrase("page.why")]
    public static partial Phrase Why();

    [Phrase("page.uniqueness")]
    public static partial Phrase Uniqueness();

    [Phrase("page.working")]
    public static partial Phrase Working();

    [Phrase("page.check")]
    public static partial Phrase Check();

    [Phrase("page.arithmetic-check")]
    public static partial Phrase ArithmeticCheck();

    [Phrase("page.accuracy")]
    public static partial Phrase Accuracy();

    [Phrase("page.another-way")]
    public static partial Phrase AnotherWay();

    [Phrase("page.what-if")]
    public static partial Phrase WhatIf();

    [Phrase("page.mistake")]
    public static partial Phrase Mistake();

    [Phrase("page.step-column")]
    public static partial Phrase StepColumn();

    [Phrase("page.statement-column")]
    public static partial Phrase StatementColumn();

    [Phrase("page.reason-column")]
    public static partial Phrase ReasonColumn();

    [Phrase("page.case-column")]
    public static partial Phrase CaseColumn();

    [Phrase("page.how-many-column")]
    public static partial Phrase HowManyColumn();

    [Phrase("page.outcome-column")]
    public static partial Phrase OutcomeColumn();

    [Phrase("page.found-before")]
    public static partial Phrase FoundBefore(Items<ClaimId> steps);

    [Phrase("page.step")]
    public static partial Phrase Step(int n, Items<string> numbers);
}
