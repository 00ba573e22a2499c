namespace Explain;

/// <summary>A remark, in italics.</summary>
internal sealed record RemarkBlock(Items<Inline> Text) : Block;
