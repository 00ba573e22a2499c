namespace Explain;

/// <summary>A claim that fills a role: the condition that it states is met.</summary>
/// <param name="Claim">The claim.</param>
public sealed record Holding(ClaimId Claim) : RoleValue;
