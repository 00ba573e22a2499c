namespace Explain;

/// <summary>
/// A kind of problem. It supplies which relations apply and what each costs a reader, the relations of its checks, its
/// cautions and an example to begin with; everything else is common to all topics. Immutable; safe to share.
/// </summary>
public sealed class Topic
{
    internal Topic(TopicId id, string starter) => (Id, Starter) = (id, starter);

    /// <summary>Its name in problem files.</summary>
    public TopicId Id { get; }

    /// <summary>A problem file of this topic to begin with.</summary>
    public string Starter { get; }

    /// <summary>What finds the values again, by coordinates and none of the formulas above.</summary>
    internal IIndependentModel Model { get; init; } = new TriangleModel();

    internal Items<CostedRule> Working { get; init; }

    internal Items<CostedRule> Checks { get; init; }

    internal Items<Phrase> Cautions { get; init; }

    /// <summary>Relations that write a quantity in terms of measurements alone, where they apply.</summary>
    internal Items<CostedRule> Closed { get; init; }

    internal Items<Phrase> Assumptions { get; init; }

    internal Func<Problem, Items<Remark>> Plan { get; init; } = _ => [];
}
