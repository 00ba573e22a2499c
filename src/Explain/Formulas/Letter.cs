namespace Explain;

/// <summary>An unknown named by a letter, such as x, or a parameter of a formula.</summary>
/// <param name="Name">The letter, one or more signs.</param>
public sealed record Letter(string Name) : Symbol;
