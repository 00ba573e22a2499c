namespace Explain;

/// <summary>The figure in words.</summary>
internal sealed record FigureBlock(Items<Inline> Lead, Items<Inline> Text) : Block;
