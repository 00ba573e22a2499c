namespace Explain;

/// <summary>The runs of a block in the order in which they are read, without those of blocks and rows inside it.</summary>
internal static class BlockRuns
{
    public static IEnumerable<Inline> Of(Block block) => block switch
    {
        HeadingBlock h => h.Text,
        ParagraphBlock p => p.Lead.Concat(p.Text),
        StepBlock s => s.Number.Concat(s.Title).Concat(s.Reason),
        StepTableBlock t => t.Headings.SelectMany(h => h),
        DisplayBlock d => d.Lines.Select(l => new MathRun(l)),
        ListBlock l => l.Entries.SelectMany(e => e),
        TableBlock t => t.Headings.Concat(t.Rows.SelectMany(r => r)).SelectMany(c => c),
        FigureBlock f => f.Lead.Concat(f.Text),
        AnswerBlock a => a.Lead.Concat(a.Text).Concat(a.Entries.SelectMany(e => e)).Concat(a.Note),
        RemarkBlock r => r.Text,
        CautionBlock c => c.Lead.Concat(c.Text),
        _ => throw new ArgumentException(block.GetType().Name, nameof(block)),
    };
}
