namespace Explain;

/// <summary>The problem is solved, and the solution passed its verification.</summary>
/// <param name="Solution">The solution.</param>
public sealed record Solved(Solution Solution) : SolveResult;
