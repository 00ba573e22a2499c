namespace Explain;

/// <summary>A division into cases: one table where the cases take the same steps, otherwise one case after the other.</summary>
internal sealed class SplitBlocks(Page page, PassageUse use, CalculationLines lines, PassageBlocks blocks)
{
    private readonly CaseTable table = new(page, lines, blocks);

    public IEnumerable<Block> Of(Split split)
    {
        if (use == PassageUse.WhenItChanges) return [new ParagraphBlock(blocks.Title(split), blocks.Reason(split)) { Of = [split.Id] }, Outcomes(split)];
        if (Leading.Is(split)) return [.. new LeadingBlocks(page, lines, blocks).Of(split), .. Rest(split, Leading.Rest(split))];
        return [blocks.Block(split, blocks.Reason(split), Says(split)), .. Rest(split, split.Cases)];
    }

    private IEnumerable<Block> Rest(Split split, Items<Case> cases) => Leading.Is(split) && cases is [var only] ? Steps(only)
        : Skeleton.IsShared(cases) ? [table.Of(cases, Leading.Is(split) ? [.. split.Cases.Where(c => c.End == CaseEnd.Holds).Select(Leading.Value)] : []) with { Of = Ids(split) }]
        : cases.SelectMany(c => One(c, split));

    /// <summary>The cases as a display where they are formulas, otherwise as words.</summary>
    private IEnumerable<Block> Says(Split split) => split.Says is AnyOf any && any.Of.All(s => s is Compare)
        ? [new DisplayBlock([Either([.. any.Of.Cast<Compare>()])])] : [new ParagraphBlock([], Sentence.Of(page.Speaker.Say(split.Says)))];

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
    private TableBlock Outcomes(Split split)
    {
        Supposing supposing = new(page, split);
        Phrase outcome = split.Cases.All(c => c.Steps[^1].Says is HowMany) ? PageWords.HowManyColumn() : PageWords.OutcomeColumn();
        return new([supposing.Heading, Capital(outcome)], [.. split.Cases.Select(c => (Items<Items<Inline>>)[supposing.Of(c), Outcome(c.Steps[^1])])]) { Of = Ids(split) };
    }

    /// <summary>What a case leads to, and what there is to say of it.</summary>
    private Items<Inline> Outcome(Step last) =>
        [.. last.Says is HowMany many ? page.Speaker.AsMany(many) : page.Speaker.Say(last.Says), .. last.Remarks.SelectMany(r => (Inline[])[new WordRun(", "), .. page.Speaker.Say(r.Says)])];

    private IEnumerable<Block> One(Case one, Split split)
    {
        yield return new ParagraphBlock(Sentence.Of(table.NameOf(one)), []) { Of = [split.Id] };
        foreach (Block block in Steps(one)) yield return block;
        if (one.End != CaseEnd.Holds) yield return new ParagraphBlock([], page.Sentence(one.End == CaseEnd.Impossible ? StepWords.Impossible() : StepWords.NotThisProblem()));
    }

    private IEnumerable<Block> Steps(Case one) => blocks.Of(new Passage(PassageUse.Working, one.Steps), new Dictionary<ClaimId, Block>());

    private static Items<ClaimId> Ids(Split split) => [.. Solution.Within(split).Select(s => s.Id)];

    private Items<Inline> Capital(Phrase phrase) => Sentence.Capital(page.Speaker.Say(phrase));
}
