namespace Explain;

/// <summary>An answer: what it says, its values as a list where there are several cases, and how they were rounded.</summary>
internal sealed record AnswerBlock(Items<Inline> Lead, Items<Inline> Text, Items<Items<Inline>> Entries, Items<Inline> Note) : Block;
