namespace Explain;

/// <summary>What a pattern read: the objects of each slot, and the place after the last token.</summary>
/// <param name="Slots">The objects of each slot, in the pattern's order.</param>
/// <param name="End">The place after the last token.</param>
internal sealed record Matching(Items<Items<Named>> Slots, int End);
