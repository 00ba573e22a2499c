namespace Explain;

/// <summary>Steps as rows: number, statement, reason.</summary>
internal sealed record StepTableBlock(Items<Items<Inline>> Headings, Items<StepRow> Rows) : Block;
