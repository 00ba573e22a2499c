namespace Explain;

/// <summary>A division into cases: one table where the cases take the same steps, otherwise one case after the other.</summary>
internal sealed class SplitBlocks(Page page, PassageUse use, CalculationLines lines, PassageBlocks blocks)
{
    public IEnumerable<Block> Of(Split split)
    {
        yield return blocks.Block(split, blocks.Reason(split), Says(split));
        if (use == PassageUse.WhenItChanges) yield return Outcomes(split);
        else if (Skeleton.IsShared(split.Cases)) yield return Merged(split);
        else foreach (Block block in split.Cases.SelectMany(One)) yield return block;
    }

    /// <summary>The cases as a display where they are formulas, otherwise as words.</summary>
    private IEnumerable<Block> Says(Split split)
    {
        if (use == PassageUse.WhenItChanges) return [];
        if (split.Says is AnyOf any && any.Of.All(s => s is Compare)) return [new DisplayBlock([Either([.. any.Of.Cast<Compare>()])])];
        return [new ParagraphBlock([], Sentence.Of(page.Speaker.Say(split.Says)))];
    }

    private MathRow Either(Compare[] any)
    {
        List<MathPiece> row = [];
        foreach (Compare one in any)
        {
            if (row.Count > 0) row.Add(new MathJoin(string.Concat(page.Speaker.Say(StepWords.Or()).OfType<WordRun>().Select(w => w.Text))));
            row.AddRange(((MathRow)page.Speaker.Math.Compare(one)).Of);
        }

        return new([.. row], MathLevel.Relation);
    }

    /// <summary>What would follow under other circumstances: a row a case, and what it leads to.</summary>
    private TableBlock Outcomes(Split split) => new(
        [[.. Capital(PageWords.CaseColumn())], [.. Capital(PageWords.OutcomeColumn())]],
        [.. split.Cases.Select(c => (Items<Items<Inline>>)[page.Speaker.Say(c.Assume), c.Steps.Count > 0 ? page.Speaker.Say(c.Steps[^1].Says) : []])]);

    private StepBlock Merged(Split split)
    {
        Items<Step> first = split.Cases[0].Steps;
        DisplayBlock[] formulas = [.. first.OfType<Calculation>().Where(c => IsTall(c) && IsAlike(split, c)).Select(c => new DisplayBlock([page.Speaker.Math.Compare(Compare.Equal(c.Target, c.Formula))]))];
        return new(blocks.Number([.. first.Select(s => page.Numbers.Of(s.Id)).OfType<string>()]),
            page.Sentence(StepWords.EachCase()), Sentence.Join(Reasons(split.Cases)), [.. formulas, Table(split), .. first.SelectMany(s => page.Remarks(s.Remarks))]);
    }

    /// <summary>The reasons of the steps in their order, each once.</summary>
    private IEnumerable<Items<Inline>> Reasons(Items<Case> cases) =>
        Enumerable.Range(0, cases[0].Steps.Count).SelectMany(i => cases.Select(c => blocks.Reason(c.Steps[i]))).Distinct();

    private TableBlock Table(Split split) => new(
        [[], .. split.Cases.Select(CaseName)],
        [.. Enumerable.Range(0, split.Cases[0].Steps.Count).SelectMany(i => Rows([.. split.Cases.Select(c => c.Steps[i])]))]);

    /// <summary>Case 1 (angle ABC is acute).</summary>
    private Items<Inline> CaseName(Case one) => Sentence.Capital(page.Speaker.Say(StepWords.Case(one.Name, one.Assume)));

    private IEnumerable<Items<Items<Inline>>> Rows(Step[] steps)
    {
        if (steps is not [Calculation first, ..])
        {
            yield return [Label(steps[0], []), .. steps.Select(blocks.Says)];
            yield break;
        }

        Calculation[] all = [.. steps.Cast<Calculation>()];
        bool alike = all.All(c => c.Formula == first.Formula), tall = alike && IsTall(first);
        if (tall) yield return [Label(first, page.Speaker.Say(StepWords.Substitution())), .. all.Select(c => Run(lines.Substitution(c)))];
        yield return tall ? [Run(lines.Target(first)), .. all.Select(c => Run(lines.Value(c)))]
            : alike ? [Label(first, Run(page.Speaker.Math.Compare(Compare.Equal(first.Target, first.Formula)))), .. all.Select(c => Run(lines.Value(c)))]
            : [Label(first, Run(lines.Target(first))), .. all.Select(c => Run(lines.Numbers(c)))];
    }

    private Items<Inline> Label(Step step, Items<Inline> text) => page.Numbers.Of(step.Id) is not { } number ? text
        : text.Count == 0 ? [new WordRun(number + ".")] : [new WordRun(number + ". "), .. text];

    private IEnumerable<Block> One(Case one)
    {
        yield return new ParagraphBlock(Sentence.Of(CaseName(one)), []);
        foreach (Block block in blocks.Of(new Passage(PassageUse.Working, one.Steps), new Dictionary<ClaimId, Block>())) yield return block;
        if (one.End != CaseEnd.Holds) yield return new ParagraphBlock([], page.Sentence(one.End == CaseEnd.Impossible ? StepWords.Impossible() : StepWords.NotThisProblem()));
    }

    private Items<Inline> Capital(Phrase phrase) => Sentence.Capital(page.Speaker.Say(phrase));

    private static bool IsAlike(Split split, Calculation first) => split.Cases.All(c => c.Steps.OfType<Calculation>().Any(s => s.Target == first.Target && s.Formula == first.Formula));

    private bool IsTall(Calculation calculation) => MathTex.IsTall(lines.Formula(calculation));

    private static Items<Inline> Run(MathPiece piece) => [new MathRun(piece)];
}
