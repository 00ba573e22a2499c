namespace Explain;

/// <summary>The worked solution: a page of one solution, whatever its topic.</summary>
internal static class WorkedSolutionForm
{
    public static IEnumerable<Block> Blocks(Page page)
    {
        OpeningBlocks opening = new(page.Solution.Of, page.Speaker);
        return
        [
            .. opening.Question("solution"), .. opening.Given(), .. opening.Assumptions(page.Solution.Premises),
            .. opening.Cautions(page.Solution.Cautions), .. opening.Plan(page.Solution.Parts),
            .. page.Solution.Parts.SelectMany(p => Part(p, page)),
            .. page.Sections.Where(s => !PageOrder.IsOfPart(s.Kind)).GroupBy(s => s.Kind).SelectMany(g => Whole(g, page)),
        ];
    }

    /// <summary>A part: what comes before its working under headings of its own, then the working with its answer.</summary>
    private static IEnumerable<Block> Part(Part part, Page page)
    {
        AnswerBlocks answers = new(page);
        (ClaimId? after, AnswerBlock? answer) = answers.Of(part);
        Dictionary<ClaimId, Block> following = after is { } id ? new() { [id] = answer! } : [];
        PassageBlocks passages = new(page);
        bool working = false;
        foreach (Section section in page.Sections.Where(s => s.Part == part && PageOrder.IsOfPart(s.Kind)))
        {
            if (section.Kind != SectionKind.Working || !working) yield return Heading(section, page);
            working |= section.Kind == SectionKind.Working;
            foreach (Block block in Passage(section, page, passages, following)) yield return block;
        }

        if (after is null && answer is not null)
        {
            if (part.Letter is not null && part.Passages.All(p => p.Use == PassageUse.Plan)) foreach (Block block in FoundBefore(part, page)) yield return block;
            yield return answer;
        }
    }

    /// <summary>A part that asks for what an earlier one has found.</summary>
    private static IEnumerable<Block> FoundBefore(Part part, Page page)
    {
        yield return Heading(new Section(SectionKind.Working, part, new Passage(PassageUse.Working, [])), page);
        ClaimId[] from = [.. part.Answers.SelectMany(a => a.Values).Select(v => v.From).Where(f => page.Numbers.Of(f) is not null).Distinct()];
        if (from.Length > 0) yield return new ParagraphBlock([], page.Sentence(PageWords.FoundBefore([.. from])));
    }

    private static IEnumerable<Block> Passage(Section section, Page page, PassageBlocks passages, Dictionary<ClaimId, Block> answers) =>
        section.Passage.Use is PassageUse.Construction or PassageUse.Drawing ? new InstructionBlocks(page).Of(section.Passage) : passages.Of(section.Passage, answers);

    /// <summary>A section for the whole page, after all the parts.</summary>
    private static IEnumerable<Block> Whole(IGrouping<SectionKind, Section> group, Page page)
    {
        yield return new HeadingBlock(2, Sentence.Capital(page.Speaker.Say(HeadingOf(group.Key))), null);
        foreach (Section section in group)
        {
            if (section.Passage.Heading is { } lead) yield return new ParagraphBlock(Sentence.Of(page.Speaker.Say(lead)), []);
            IEnumerable<Block> blocks = group.Key is SectionKind.Check or SectionKind.ArithmeticCheck ? new CheckBlocks(page).Of(section)
                : new PassageBlocks(page).Of(section.Passage, new Dictionary<ClaimId, Block>());
            foreach (Block block in blocks) yield return block;
            if (group.Key == SectionKind.Accuracy)
                foreach (Items<Inline> sentence in new AnswerBlocks(page).Accuracy(section.Part)) yield return new ParagraphBlock([], sentence);
        }
    }

    private static HeadingBlock Heading(Section section, Page page)
    {
        Phrase? own = section.Passage.Heading;
        if (section.Kind != SectionKind.Working) return new(2, Sentence.Capital(page.Speaker.Say(own ?? HeadingOf(section.Kind))), null);
        if (section.Part.Letter is not { } letter) return new(2, Sentence.Capital(page.Speaker.Say(own ?? PageWords.Working())), null);
        Items<Inline> title = own is null ? page.Speaker.And([.. section.Part.Asked.Select(g => GoalText.Of(g, page.Speaker))]) : page.Speaker.Say(own);
        return new(2, [.. page.Speaker.Say(PageWords.Letter(letter)), new WordRun(" "), .. Sentence.Capital(title)], OpeningBlocks.Label(page.Solution.Of, "solution-" + letter));
    }

    private static Phrase HeadingOf(SectionKind kind) => kind switch
    {
        SectionKind.Existence => PageWords.Existence(),
        SectionKind.Construction => PageWords.Construction(),
        SectionKind.Why => PageWords.Why(),
        SectionKind.Uniqueness => PageWords.Uniqueness(),
        SectionKind.Check => PageWords.Check(),
        SectionKind.ArithmeticCheck => PageWords.ArithmeticCheck(),
        SectionKind.Accuracy => PageWords.Accuracy(),
        SectionKind.AnotherWay => PageWords.AnotherWay(),
        SectionKind.WhatIf => PageWords.WhatIf(),
        SectionKind.Mistake => PageWords.Mistake(),
        _ => PageWords.Working(),
    };
}
