namespace Explain;

/// <summary>Instructions to draw, numbered for themselves, each with its guarantee in italics.</summary>
internal sealed class InstructionBlocks(Page page)
{
    public IEnumerable<Block> Of(Passage passage)
    {
        yield return new ListBlock(Numbered: true, [.. passage.Steps.Select(Entry)]) { Of = [.. passage.Steps.SelectMany(Solution.Within).Select(s => s.Id)] };
        foreach (Block remark in page.Remarks(passage.Remarks)) yield return remark;
    }

    private Items<Inline> Entry(Step step) => step is Instruction instruction
        ? Sentence.Join(page.Sentence(instruction.Act), [new Emphasis(Sentence.Of(page.Speaker.Say(step.Says)))])
        : Sentence.Join(Sentence.Of(page.Speaker.Say(step.Says)), Sentence.Of(page.Reason(step)));
}
