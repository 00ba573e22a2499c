namespace Explain;

/// <summary>
/// A kind of problem. It supplies which relations apply and what each costs a reader, the relations of its checks, its
/// cautions and an example to begin with; steps, marks, pages and outputs are common to all topics. Words of a topic's own rules and
/// phrases are handed to the renderer. Immutable; safe to share.
/// </summary>
/// <param name="Id">Its name in problem files.</param>
/// <param name="Starter">A problem file of this topic to begin with.</param>
public sealed record Topic(TopicId Id, string Starter)
{
    /// <summary>
    /// Whether a problem that names no topic is of this kind, by what its figure, its givens and its goals are; whether it can be
    /// solved is another question. By default a topic is used only where it is named.
    /// </summary>
    public Func<Problem, bool> Accepts { get; init; } = _ => false;

    /// <summary>What its problems need, for a list of topics; null where nothing is said.</summary>
    public TopicWords? Words { get; init; }

    /// <summary>Relations and deductions that this topic adds to the rule book.</summary>
    public Items<Rule> Rules { get; init; }

    /// <summary>The relations that find what is asked.</summary>
    public Items<CostedRule> Working { get; init; }

    /// <summary>The relations of its checks; one that the working has used makes an arithmetic check only.</summary>
    public Items<CostedRule> Checks { get; init; }

    /// <summary>Relations that write a quantity in terms of measurements alone, where they apply.</summary>
    public Items<CostedRule> Closed { get; init; }

    /// <summary>What to take care of in work of this kind.</summary>
    public Items<Phrase> Cautions { get; init; }

    /// <summary>What is assumed in every problem of this kind.</summary>
    public Items<Phrase> Assumptions { get; init; }

    /// <summary>What the page says before its first step; null where the chain of rules of its steps says it.</summary>
    public Func<Problem, Items<Remark>>? Plan { get; init; }

    /// <summary>The heading of a part; null where the list of its goals says it.</summary>
    public Func<Items<Goal>, Phrase?> Heading { get; init; } = _ => null;

    /// <summary>What finds the values again, by coordinates and none of the formulas above.</summary>
    internal IIndependentModel Model { get; init; } = new FigureModel();
}
