namespace Explain;

/// <summary>A passage where the page prints it.</summary>
internal sealed record Section(SectionKind Kind, Part Part, Passage Passage);
