namespace Explain;

/// <summary>A map, its entries in order; no key twice.</summary>
/// <param name="Of">Its entries.</param>
/// <param name="At">Where it begins.</param>
internal sealed record FileMap(Items<FileEntry> Of, Position At) : FileNode(At);
