namespace Explain;

/// <summary>The topics of the library.</summary>
public static class Topics
{
    /// <summary>All topics, in the order in which they are listed.</summary>
    public static Items<Topic> All { get; } = [InaccessibleDistance.Topic, SolveATriangle.Topic];
}
