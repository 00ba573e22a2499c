namespace Explain;

/// <summary>A phrase in words.</summary>
/// <param name="Id">The phrase.</param>
/// <param name="Text">Its words, with placeholders.</param>
/// <param name="Row">The line in the file, counted from 0.</param>
/// <param name="Start">Where the line begins in the file.</param>
/// <param name="Length">How long the line is.</param>
internal sealed record WordingLine(string Id, string Text, int Row, int Start, int Length);
