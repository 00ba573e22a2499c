namespace Explain;

/// <summary>An argument of a phrase.</summary>
/// <param name="Name">The name under which the wording places it.</param>
public abstract record Arg(string Name);
