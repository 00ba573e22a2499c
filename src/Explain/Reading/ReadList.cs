namespace Explain;

/// <summary>A list.</summary>
internal sealed record ReadList(Items<ReadNode> Of, Position At) : ReadNode(At);
