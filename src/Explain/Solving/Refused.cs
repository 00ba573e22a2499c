namespace Explain;

/// <summary>There is something wrong with the problem.</summary>
/// <param name="Errors">What is wrong, in line order.</param>
public sealed record Refused(Items<ProblemError> Errors) : SolveResult
{
    /// <summary>How many errors are left out because there are more than can be reported at once.</summary>
    public int More { get; init; }
}
