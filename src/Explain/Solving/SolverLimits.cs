namespace Explain;

/// <summary>The most work that one problem may cost. It is counted and never timed, so that every machine gives the same result. Immutable.</summary>
public sealed record SolverLimits
{
    /// <summary>The limits that hold unless a program says otherwise.</summary>
    public static SolverLimits Default { get; } = new();

    /// <summary>
    /// How many uses of rules a search may look at: one rule at one place of the figure, for one unknown. Beyond it the problem is
    /// refused as <c>too-large</c>. A triangle needs some hundreds.
    /// </summary>
    public long UsesOfRules { get; init; } = 1_000_000;
}
