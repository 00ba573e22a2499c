namespace Explain;

/// <summary>Steps or premises to be referred to by number.</summary>
/// <param name="Name">The name under which the wording places it.</param>
/// <param name="Are">What is said.</param>
public sealed record StepArg(string Name, Items<ClaimId> Are) : Arg(Name);
