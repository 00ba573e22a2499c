namespace Explain;

/// <summary>The user's own text, printed as it stands and never taken for markup.</summary>
/// <param name="Name">The name under which the wording places it.</param>
/// <param name="Is">What is said.</param>
public sealed record TextArg(string Name, string Is) : Arg(Name);
