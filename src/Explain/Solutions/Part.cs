namespace Explain;

/// <summary>One lettered part of a problem, or the whole of it.</summary>
/// <param name="Letter">The letter; null when there are none.</param>
/// <param name="Asked">What it asks.</param>
/// <param name="Passages">Its passages, in order.</param>
/// <param name="Answers">Its answers, one for each thing asked.</param>
public sealed record Part(string? Letter, Items<Goal> Asked, Items<Passage> Passages, Items<Answer> Answers)
{
    /// <summary>How an answer begins that has a value for each of several cases; null where nothing more is to be said than how many there are.</summary>
    public Phrase? Several { get; init; }
}
