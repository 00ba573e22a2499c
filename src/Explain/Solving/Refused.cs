namespace Explain;

/// <summary>There is something wrong with the problem.</summary>
/// <param name="Errors">What is wrong, in line order.</param>
public sealed record Refused(Items<ProblemError> Errors) : SolveResult;
