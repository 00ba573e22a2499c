namespace Explain;

/// <summary>A run of steps with one purpose.</summary>
/// <param name="Use">The purpose.</param>
/// <param name="Steps">The steps, in order.</param>
public sealed record Passage(PassageUse Use, Items<Step> Steps)
{
    /// <summary>A heading of its own; null for the usual one.</summary>
    public Phrase? Heading { get; init; }

    /// <summary>Sentences of the passage that are no steps.</summary>
    public Items<Remark> Remarks { get; init; }

    /// <summary>Premises exchanged for this passage only.</summary>
    public Items<Instead> Instead { get; init; }
}
