namespace Explain;

/// <summary>The name of a topic, in the words of a problem file, such as solve a triangle.</summary>
/// <param name="Name">The name. Two ids are equal when their names are, letter by letter.</param>
public readonly record struct TopicId(string Name)
{
    /// <summary>The name itself.</summary>
    public override string ToString() => Name;
}
