namespace Explain;

/// <summary>The solution did not pass its own verification, so there are no answers. Please report it.</summary>
/// <param name="Findings">What was found.</param>
public sealed record Failed(Items<Finding> Findings) : SolveResult;
