namespace Explain;

/// <summary>Runs in italics.</summary>
internal sealed record Emphasis(Items<Inline> Runs) : Inline;
