namespace Explain;

/// <summary>Words that stand as they are.</summary>
internal sealed record WordingWords(string Text) : WordingPiece;
