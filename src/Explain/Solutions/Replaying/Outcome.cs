namespace Explain;

/// <summary>The value of a claim under the changes.</summary>
/// <param name="Claim">The claim.</param>
/// <param name="Value">
/// Its value, in the unit of the solution. Where a given has a range the value is a range too: its enclosure reaches from the least
/// to the greatest value, rounded outwards far beyond any digit shown.
/// </param>
public readonly record struct Outcome(ClaimId Claim, Value Value);
