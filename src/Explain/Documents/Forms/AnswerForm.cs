namespace Explain;

/// <summary>The answers alone.</summary>
internal static class AnswerForm
{
    public static IEnumerable<Block> Blocks(Page page)
    {
        AnswerBlocks answers = new(page);
        HeadingBlock title = (HeadingBlock)new OpeningBlocks(page.Solution.Of, page.Speaker).Question("answer").First();
        return [title, .. page.Solution.Parts.Where(p => p.Answers.Count > 0).Select(answers.Block)];
    }
}
