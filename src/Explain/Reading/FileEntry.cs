namespace Explain;

/// <summary>An entry of a map.</summary>
/// <param name="Key">Its key, a text.</param>
/// <param name="Value">Its value.</param>
internal sealed record FileEntry(FileText Key, FileNode Value);
