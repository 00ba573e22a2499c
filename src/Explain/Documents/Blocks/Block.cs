namespace Explain;

/// <summary>A block of a document: what a template prints. It knows no topic and no output.</summary>
internal abstract record Block;
