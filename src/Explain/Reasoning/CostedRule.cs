namespace Explain;

/// <summary>A relation that a topic tries, and what a use of it costs a reader.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Cost">Its cost, 0 or more; the cheapest way is printed. The sum of the angles of a triangle costs 1, the cosine rule 2.5.</param>
/// <param name="Targets">How many of its first parameters it may be solved for; 0 for any.</param>
public sealed record CostedRule(Rule Rule, double Cost, int Targets = 0)
{
    /// <summary>The rule that a use of this one uses as well; null where there is none.</summary>
    public Rule? With { get; init; }
}
