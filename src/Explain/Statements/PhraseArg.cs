namespace Explain;

/// <summary>Another phrase.</summary>
/// <param name="Name">The name under which the wording places it.</param>
/// <param name="Is">What is said.</param>
public sealed record PhraseArg(string Name, Phrase Is) : Arg(Name);
