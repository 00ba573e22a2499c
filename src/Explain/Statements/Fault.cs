namespace Explain;

/// <summary>What is wrong with a text: a code of the one list, what is wrong in words, and what to do.</summary>
/// <param name="Code">The code.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Remedy">What to do; null where the message says it.</param>
internal sealed record Fault(string Code, Phrase Message, Phrase? Remedy);
