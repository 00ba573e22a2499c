namespace Explain;

/// <summary>A claim that does not stand any more. What rests on it is not said to be broken as well.</summary>
/// <param name="Claim">The claim.</param>
/// <param name="Why">Why.</param>
public sealed record Broken(ClaimId Claim, Break Why);
