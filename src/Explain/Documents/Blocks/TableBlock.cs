namespace Explain;

/// <summary>A table; the first column labels the rows.</summary>
internal sealed record TableBlock(Items<Items<Inline>> Headings, Items<Items<Items<Inline>>> Rows) : Block;
