namespace Explain;

/// <summary>The marks of a lettered part.</summary>
/// <param name="Letter">The letter.</param>
/// <param name="Marks">How many, 1 or more.</param>
public sealed record PartMarks(string Letter, int Marks);
