namespace Explain;

/// <summary>A node of a problem file: the same for YAML and JSON.</summary>
/// <param name="At">Where it begins.</param>
internal abstract record FileNode(Position At);
