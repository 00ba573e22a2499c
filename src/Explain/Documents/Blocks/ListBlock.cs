namespace Explain;

/// <summary>A list, numbered or with dots.</summary>
internal sealed record ListBlock(bool Numbered, Items<Items<Inline>> Entries) : Block;
