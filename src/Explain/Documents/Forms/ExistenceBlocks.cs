namespace Explain;

/// <summary>A count of figures as one step: what is drawn for it, its values, how they compare, and the verdict.</summary>
internal sealed class ExistenceBlocks(Page page, CalculationLines lines, PassageBlocks blocks)
{
    /// <summary>Whether a passage is one comparison that ends with a count.</summary>
    public static bool IsOneStep(Passage passage) => passage is { Use: PassageUse.Existence, Steps: [.., Deduction { Says: HowMany }] }
        && passage.Steps.All(s => s is Instruction or Calculation or Deduction);

    public IEnumerable<Block> Of(Passage passage)
    {
        Step[] before = [.. passage.Steps.Take(passage.Steps.Count - 1)];
        Step verdict = passage.Steps[^1], titled = passage.Steps.FirstOrDefault(s => s.Title is not null) ?? verdict;
        Items<ClaimId> all = [.. passage.Steps.Select(s => s.Id)];
        MathPiece[] display = [.. before.SelectMany(Display)];
        Items<Inline> reason = Sentence.Join(before.Select(Said)), end = Sentence.Join(blocks.Reason(verdict), [new Strong(Sentence.Of(page.Speaker.Say(verdict.Says)))]);
        if (display.Length == 0) yield return blocks.Block(titled, Sentence.Join(reason, end), []) with { Of = all };
        else yield return blocks.Block(titled, reason, [new DisplayBlock([.. display]), new ParagraphBlock([], end)]) with { Of = all };
        foreach (Block remark in page.Remarks(passage.Remarks)) yield return remark;
    }

    private Items<Inline> Said(Step step) => step switch
    {
        Instruction i => Sentence.Join(page.Sentence(i.Act), blocks.Reason(i)),
        Calculation c => blocks.Reason(c),
        _ => [],
    };

    private IEnumerable<MathPiece> Display(Step step) => step switch
    {
        Calculation c => [.. lines.Conversions(c), lines.Chain(c)],
        Deduction { Says: Compare compare } => Compared(new ComparisonLine(page.Speaker, page.Claims), compare, step.Why.From) is { } numbers ? [numbers] : [],
        _ => [],
    };

    /// <summary>Values as numbers; what has yet to be calculated with its formula.</summary>
    private static MathPiece? Compared(ComparisonLine line, Compare compare, Items<ClaimId> from) =>
        compare.Terms.All(t => t is SymbolUse or ValueOf) ? line.Numbers(compare, from) : line.Of(compare, from);
}
