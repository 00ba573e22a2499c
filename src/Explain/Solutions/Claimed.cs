namespace Explain;

/// <summary>Something claimed: a premise or a step. Both share one sequence of ids.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Says">What is claimed.</param>
public abstract record Claimed(ClaimId Id, Statement Says);
