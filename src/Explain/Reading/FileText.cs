namespace Explain;

/// <summary>A text. Every value is one: nothing is taken for a number, a truth or a date.</summary>
/// <param name="Is">The text, without spaces round it.</param>
/// <param name="At">Where it begins.</param>
internal sealed record FileText(string Is, Position At) : FileNode(At);
