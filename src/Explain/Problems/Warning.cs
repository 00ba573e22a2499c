namespace Explain;

/// <summary>Something to know about a problem that was solved all the same.</summary>
/// <param name="Code">A code of the one list, such as <c>several-solutions</c>.</param>
/// <param name="Message">What to know.</param>
public sealed record Warning(string Code, Phrase Message);
