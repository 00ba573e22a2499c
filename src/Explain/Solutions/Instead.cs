namespace Explain;

/// <summary>A premise exchanged for another in one passage.</summary>
/// <param name="Premise">The premise that is not used.</param>
/// <param name="By">What is supposed in its place.</param>
public sealed record Instead(ClaimId Premise, Statement By);
