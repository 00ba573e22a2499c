namespace Explain;

/// <summary>The order in which a page prints the passages of a solution.</summary>
internal static class PageOrder
{
    public static Items<Section> Of(Solution solution) =>
    [
        .. solution.Parts.SelectMany(p => Sections(p).Where(s => IsOfPart(s.Kind)).OrderBy(s => s.Kind)),
        .. solution.Parts.SelectMany(Sections).Where(s => !IsOfPart(s.Kind)).OrderBy(s => s.Kind),
    ];

    public static bool IsOfPart(SectionKind kind) => kind <= SectionKind.Working;

    /// <summary>Whether its steps carry the numbers of the page: not instructions to draw, which are counted for themselves, nor checks, nor what would be with other numbers.</summary>
    public static bool IsNumbered(Section section) =>
        section.Kind is not (SectionKind.Check or SectionKind.ArithmeticCheck or SectionKind.WhatIf) && section.Passage.Use is not (PassageUse.Construction or PassageUse.Drawing);

    private static IEnumerable<Section> Sections(Part part) =>
        part.Passages.Where(p => p.Use != PassageUse.Plan).Select(p => new Section(KindOf(p.Use), part, p));

    private static SectionKind KindOf(PassageUse use) => use switch
    {
        PassageUse.Existence => SectionKind.Existence,
        PassageUse.Construction => SectionKind.Construction,
        PassageUse.WhyItWorks => SectionKind.Why,
        PassageUse.Uniqueness => SectionKind.Uniqueness,
        PassageUse.Check => SectionKind.Check,
        PassageUse.ArithmeticCheck => SectionKind.ArithmeticCheck,
        PassageUse.Accuracy => SectionKind.Accuracy,
        PassageUse.AnotherWay => SectionKind.AnotherWay,
        PassageUse.WhenItChanges or PassageUse.LessIsEnough => SectionKind.WhatIf,
        PassageUse.TemptingMistake => SectionKind.Mistake,
        _ => SectionKind.Working,
    };
}
