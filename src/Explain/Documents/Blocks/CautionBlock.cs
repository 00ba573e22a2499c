namespace Explain;

/// <summary>Take care.</summary>
internal sealed record CautionBlock(Items<Inline> Lead, Items<Inline> Text) : Block;
