namespace Explain;

/// <summary>What the referee found wrong.</summary>
/// <param name="Test">Which test failed: V1 to V9.</param>
/// <param name="Claim">The claim at fault; null when the whole solution is.</param>
/// <param name="Detail">What was found, for whoever reports it.</param>
public sealed record Finding(string Test, ClaimId? Claim, string Detail);
