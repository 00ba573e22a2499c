namespace Explain;

/// <summary>A line of a wording file that cannot be read.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Id">The id that stands before its colon; the whole line where there is none.</param>
/// <param name="Row">The line in the file, counted from 0.</param>
/// <param name="Start">Where the line begins in the file.</param>
/// <param name="Length">How long the line is.</param>
internal sealed record WordingFault(WordingFaultKind Kind, string Id, int Row, int Start, int Length);
