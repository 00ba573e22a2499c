namespace Explain;

/// <summary>The quantity rises or falls with each measurement all the way, so the extremes are at the corners that the directions name.</summary>
/// <param name="Varies">One claim for each measurement.</param>
public sealed record Monotone(Items<ClaimId> Varies) : BoundsProof;
