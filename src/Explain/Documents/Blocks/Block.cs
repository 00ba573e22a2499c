namespace Explain;

/// <summary>A block of a document: what a template prints. It knows no topic and no output.</summary>
internal abstract record Block
{
    /// <summary>The steps that it prints; of a block inside another, those of the other where it names none. None outside the steps.</summary>
    public Items<ClaimId> Of { get; init; }
}
