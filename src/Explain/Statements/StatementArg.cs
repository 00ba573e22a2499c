namespace Explain;

/// <summary>A statement of the figure grammar.</summary>
/// <param name="Name">The name under which the wording places it.</param>
/// <param name="Is">What is said.</param>
public sealed record StatementArg(string Name, Statement Is) : Arg(Name);
