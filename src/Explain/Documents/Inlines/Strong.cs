namespace Explain;

/// <summary>Runs that stand out: an answer, a verdict.</summary>
internal sealed record Strong(Items<Inline> Runs) : Inline;
