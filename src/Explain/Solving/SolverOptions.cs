namespace Explain;

/// <summary>What a solver knows and how far it goes. Immutable; safe to share. Two are equal when their members are.</summary>
public sealed record SolverOptions
{
    /// <summary>The kinds of problem; the library's by default.</summary>
    public Topics Topics { get; init; } = Topics.Standard;

    /// <summary>The rules; the library's by default. A relation added to these is tried in every topic, beside those of the topic.</summary>
    public RuleBook Rules { get; init; } = RuleBook.Standard;

    /// <summary>
    /// Whether a solution is verified before it is handed out; true by default. A solution that is not verified says so, in
    /// <see cref="Solution.Verification"/> and in JSON.
    /// </summary>
    public bool Verify { get; init; } = true;

    /// <summary>The most work that one problem may cost.</summary>
    public SolverLimits Limits { get; init; } = SolverLimits.Default;
}
