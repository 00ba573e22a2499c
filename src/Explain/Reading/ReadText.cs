namespace Explain;

/// <summary>A text, as typed.</summary>
internal sealed record ReadText(string Text, Position At) : ReadNode(At);
