namespace Explain;

/// <summary>A piece of a problem file with its place: a text, a list or a map.</summary>
internal abstract record ReadNode(Position At);
