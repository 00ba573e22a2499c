namespace Explain;

/// <summary>What the referee did with a solution.</summary>
/// <param name="Ran">Whether it ran.</param>
/// <param name="Passed">The tests passed.</param>
/// <param name="Findings">What was found wrong; empty for a solution that may be printed.</param>
/// <param name="Grades">How each claim is proved.</param>
public sealed record Verification(bool Ran, Items<string> Passed, Items<Finding> Findings, Items<Graded> Grades)
{
    /// <summary>The referee has not run.</summary>
    public static readonly Verification NotRun = new(false, [], [], []);
}
