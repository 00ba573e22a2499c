namespace Explain;

/// <summary>A claim and how it is proved.</summary>
/// <param name="Claim">The claim.</param>
/// <param name="Grade">How it is proved.</param>
public readonly record struct Graded(ClaimId Claim, Grade Grade);
