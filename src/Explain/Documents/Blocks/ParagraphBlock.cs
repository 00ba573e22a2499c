namespace Explain;

/// <summary>A paragraph, with a bold lead such as Given.</summary>
internal sealed record ParagraphBlock(Items<Inline> Lead, Items<Inline> Text) : Block;
