namespace Explain;

/// <summary>What is wrong with a problem: a stable code, a place, what is wrong in the words of geometry, and what to do.</summary>
/// <param name="Code">A code of the one list, such as <c>no-triangle</c>; it never changes its meaning.</param>
/// <param name="Lines">The lines at fault, ascending; empty when there is no file.</param>
/// <param name="Column">The column on the first line, counted from 1; 0 for the whole line.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Remedy">What to do.</param>
public sealed record ProblemError(string Code, Items<int> Lines, int Column, Phrase Message, Phrase? Remedy);
