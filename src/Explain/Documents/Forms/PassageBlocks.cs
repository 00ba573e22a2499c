namespace Explain;

/// <summary>The steps of a passage as blocks: deductions and algebra as rows of tables, the others each by itself.</summary>
internal sealed class PassageBlocks(Page page)
{
    private readonly CalculationLines lines = new(page);

    /// <summary>The blocks of a passage, its answers straight after the step that reaches them.</summary>
    public IEnumerable<Block> Of(Passage passage, IReadOnlyDictionary<ClaimId, Block> answers)
    {
        if (ExistenceBlocks.IsOneStep(passage))
        {
            foreach (Block block in new ExistenceBlocks(page, lines, this).Of(passage)) yield return block;
            yield break;
        }

        List<Step> rows = [];
        foreach (Step step in passage.Steps)
        {
            bool isRow = step is Deduction or Algebra;
            if (!isRow) foreach (Block block in Flush(rows)) yield return block;
            if (isRow) rows.Add(step);
            else foreach (Block block in Of(step, passage.Use)) yield return block;
            if (Answer(step, answers) is not { } answer) continue;
            foreach (Block block in Flush(rows)) yield return block;
            yield return answer;
        }

        foreach (Block block in Flush(rows)) yield return block;
        foreach (Block remark in page.Remarks(passage.Remarks)) yield return remark;
    }

    private static Block? Answer(Step step, IReadOnlyDictionary<ClaimId, Block> answers) =>
        Solution.Within(step).Select(s => answers.GetValueOrDefault(s.Id)).FirstOrDefault(b => b is not null);

    private IEnumerable<Block> Of(Step step, PassageUse use) => step switch
    {
        Calculation c => [Calculation(c)],
        Instruction i => [Block(i, Sentence.Join(page.Sentence(i.Act), Reason(i)), [])],
        Quadratic q => [Block(q, Sentence.Join(page.Sentence(StepWords.Write(Compare.Equal(q.For, q.Named))), Reason(q)), [new DisplayBlock(new QuadraticLines(page).Of(q))])],
        Series s => [new SeriesBlocks(page, lines).Of(s)],
        Split s => new SplitBlocks(page, use, lines, this).Of(s),
        _ => Table([step]),
    };

    private StepBlock Calculation(Calculation calculation) => Block(calculation, Reason(calculation),
        [new DisplayBlock([.. lines.Conversions(calculation), .. page.Numbers.IsAgain(calculation.Id) ? [lines.Chain(calculation)] : lines.Full(calculation)]), .. Bindings(calculation), .. TooWide(calculation)]);

    private IEnumerable<Block> TooWide(Calculation calculation) => lines.IsTooWide(calculation) ? [new RemarkBlock(page.Sentence(StepWords.LongFormula()))] : [];

    /// <summary>At full detail, where each value comes from.</summary>
    private IEnumerable<Block> Bindings(Calculation calculation)
    {
        if (page.Detail != Detail.Full || calculation.Bindings.Count == 0) yield break;
        yield return new ListBlock(Numbered: false, [.. calculation.Bindings.Select(Binding)]);
    }

    private Items<Inline> Binding(Binding binding)
    {
        MathRun says = new(page.Speaker.Math.Compare(Compare.Equal(binding.Of, binding.Is)));
        return binding.Is is ValueOf { Claim: var claim } && page.Numbers.Of(claim) is not null
            ? page.Speaker.Say(StepWords.From([claim], ""), ("says", [says])) : [says];
    }

    public StepBlock Block(Step step, Items<Inline> reason, IEnumerable<Block> body) =>
        new(Number(page.Numbers.Of(step.Id) is { } number ? [number] : []), Title(step), reason, [.. body, .. page.Remarks(step.Remarks)]) { Of = step is Series or Quadratic ? [.. Solution.Within(step).Select(s => s.Id)] : [step.Id] };

    public Items<Inline> Reason(Step step) => Sentence.Of(page.Reason(step));

    /// <summary>Step 5. Steps 5 and 6.</summary>
    public Items<Inline> Number(Items<string> numbers) => numbers.Count == 0 ? [] : Sentence.Of(page.Speaker.Say(PageWords.Step(numbers.Count, numbers), ("numbers", page.Speaker.And([.. numbers.Select(n => (Items<Inline>)[new StepRun(n)])]))));

    public Items<Inline> Title(Step step) => step.Title is { } title ? page.Sentence(title) : step switch
    {
        Calculation { Target: Ratio { Of: var a } ratio } => page.Sentence(ratio.Function switch
        {
            Function.Sine => StepWords.FindSine(new(a.First, a.Vertex, a.Second)),
            Function.Cosine => StepWords.FindCosine(new(a.First, a.Vertex, a.Second)),
            _ => StepWords.FindTangent(new(a.First, a.Vertex, a.Second)),
        }),
        Calculation c => page.Sentence(page.IsFoundAgain(c) ? StepWords.FindDirectly(c.Target) : StepWords.Find(c.Target)),
        Split => page.Sentence(StepWords.Cases()),
        Series => page.Sentence(StepWords.Substitute()),
        _ => [],
    };

    private IEnumerable<Block> Flush(List<Step> rows)
    {
        if (rows.Count == 0) return [];
        Step[] taken = [.. rows];
        rows.Clear();
        return Table(taken);
    }

    private IEnumerable<Block> Table(Step[] steps) =>
    [
        new StepTableBlock([.. Headings.Select(h => Sentence.Capital(page.Speaker.Say(h)))], [.. steps.SelectMany(Rows)]),
        .. steps.SelectMany(s => page.Remarks(s.Remarks).Select(r => r with { Of = [s.Id] })),
    ];

    private static Phrase[] Headings => [PageWords.StepColumn(), PageWords.StatementColumn(), PageWords.ReasonColumn()];

    private IEnumerable<StepRow> Rows(Step step) => step is Algebra algebra ? AlgebraRows(algebra)
        : [new(page.Numbers.Of(step.Id) ?? "", Says(step), page.Reason(step), step.Id)];

    /// <summary>What a step states: a count stands out, a comparison shows its numbers.</summary>
    public Items<Inline> Says(Step step) => step.Says switch
    {
        HowMany => [new Strong(page.Speaker.Say(step.Says))],
        Compare compare when new ComparisonLine(page.Speaker, page.Claims).Of(compare, step.Why.From) is { } line => [new MathRun(line)],
        _ => page.Speaker.Say(step.Says),
    };

    private IEnumerable<StepRow> AlgebraRows(Algebra algebra) => StepNumbers.LinesOf(algebra, page.Detail).Select((line, i) => new StepRow(
        page.Numbers.OfLine(algebra, i, page.Detail) ?? "",
        [new MathRun(page.Speaker.Math.Compare(Compare.Equal(line.Says.Left, line.Says.Right)))],
        i == 0 ? page.Reason(algebra) : MoveReason.Of(line.By, page.Speaker), algebra.Id));
}
