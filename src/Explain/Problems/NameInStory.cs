namespace Explain;

/// <summary>What a point or a quantity is in the story: AB is the width of the ravine.</summary>
/// <param name="Of">The letters, as typed: A, AB, ABC.</param>
/// <param name="Is">The user's words.</param>
public sealed record NameInStory(string Of, string Is)
{
    /// <summary>Where it stands.</summary>
    public Position At { get; init; }
}
