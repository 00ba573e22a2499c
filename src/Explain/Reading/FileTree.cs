namespace Explain;

/// <summary>A file as read: its tree, as far as it goes, and what is wrong with it.</summary>
/// <param name="Root">The tree; null when the file cannot be read at all.</param>
/// <param name="Errors">What is wrong.</param>
/// <param name="More">How many errors are left out because there are too many.</param>
internal sealed record FileTree(FileNode? Root, Items<ProblemError> Errors, int More = 0);
