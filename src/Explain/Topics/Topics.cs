namespace Explain;

/// <summary>The kinds of problem that a solver knows, each once. Immutable; safe to share.</summary>
public sealed class Topics
{
    private Topics(Items<Topic> all)
    {
        if (all.GroupBy(t => t.Id).FirstOrDefault(g => g.Count() > 1) is { } twice) throw new ArgumentException(twice.Key.Name, nameof(all));
        All = all;
    }

    /// <summary>The topics of the library.</summary>
    public static Topics Standard { get; } = new([InaccessibleDistance.Topic, SolveATriangle.Topic]);

    /// <summary>All topics, in the order in which they are listed.</summary>
    public Items<Topic> All { get; }

    /// <summary>These topics and more at their end.</summary>
    /// <param name="topics">The topics; none may have the name of one already there.</param>
    /// <exception cref="ArgumentException">Two topics have one name.</exception>
    public Topics With(params Items<Topic> topics) => new([.. All, .. topics]);

    /// <summary>The topic of a name; null when there is none.</summary>
    /// <param name="id">The name.</param>
    public Topic? Find(TopicId id) => All.FirstOrDefault(t => t.Id == id);
}
