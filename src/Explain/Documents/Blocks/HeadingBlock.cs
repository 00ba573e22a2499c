namespace Explain;

/// <summary>A heading: level 1 is the title.</summary>
internal sealed record HeadingBlock(int Level, Items<Inline> Text, string? Label) : Block;
