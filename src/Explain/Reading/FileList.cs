namespace Explain;

/// <summary>A list.</summary>
/// <param name="Of">Its items.</param>
/// <param name="At">Where it begins.</param>
internal sealed record FileList(Items<FileNode> Of, Position At) : FileNode(At);
