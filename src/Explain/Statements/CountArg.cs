namespace Explain;

/// <summary>A count, which also chooses singular or plural.</summary>
/// <param name="Name">The name under which the wording places it.</param>
/// <param name="Is">What is said.</param>
public sealed record CountArg(string Name, int Is) : Arg(Name);
