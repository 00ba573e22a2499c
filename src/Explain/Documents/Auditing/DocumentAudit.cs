namespace Explain;

/// <summary>Finds what a document shows that does not come from its problem and its solution.</summary>
internal sealed class DocumentAudit(EvidenceBook book, WordingTable table)
{
    public IEnumerable<Finding> Of(Document document) => document.Blocks.SelectMany(b => Of(b, []));

    private IEnumerable<Finding> Of(Block block, Items<ClaimId> outer)
    {
        Items<ClaimId> steps = block.Of.Count > 0 ? block.Of : outer;
        IEnumerable<Finding> inside = block switch
        {
            StepBlock step => step.Body.SelectMany(b => Of(b, steps)),
            StepTableBlock rows => rows.Rows.SelectMany(r => Of([new StepRun(r.Number), .. r.Statement, .. r.Reason], [r.Of])),
            _ => [],
        };
        return Of(BlockRuns.Of(block), steps).Concat(inside);
    }

    private IEnumerable<Finding> Of(IEnumerable<Inline> runs, Items<ClaimId> steps)
    {
        InlineAudit audit = new(book.For(steps), book.RuleIds, table);
        return runs.SelectMany(audit.Strangers).Select(s => new Finding("V8", steps.Count > 0 ? steps[0] : null, s));
    }
}
