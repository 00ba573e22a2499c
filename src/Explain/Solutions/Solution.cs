namespace Explain;

/// <summary>
/// What is claimed of a problem, why, and with what values: a graph that can be run again. It holds no language and no layout.
/// Two solutions are equal when problem, topic, premises, parts, theorems and warnings are; the referee's report is left out.
/// Safe to share between threads.
/// </summary>
/// <param name="Of">The problem.</param>
/// <param name="Topic">The topic that solved it.</param>
/// <param name="Premises">What it starts from.</param>
/// <param name="Parts">Its parts, in order.</param>
/// <param name="Theorems">Library theorems that steps appeal to.</param>
/// <param name="Warnings">What to know.</param>
/// <param name="Cautions">The usual cautions for work of this kind.</param>
/// <param name="Verification">What the referee did.</param>
public sealed record Solution(Problem Of, TopicId Topic, Items<Premise> Premises, Items<Part> Parts, Items<Theorem> Theorems,
    Items<Warning> Warnings, Items<Phrase> Cautions, Verification Verification)
{
    /// <summary>Every step of every part and passage, in order; steps inside cases and rows follow the step that holds them.</summary>
    public IEnumerable<Step> Steps => Parts.SelectMany(p => p.Passages).SelectMany(p => p.Steps).SelectMany(Within);

    /// <inheritdoc/>
    public bool Equals(Solution? other) => other is not null && Of == other.Of && Topic == other.Topic && Premises == other.Premises
        && Parts == other.Parts && Theorems == other.Theorems && Warnings == other.Warnings && Cautions == other.Cautions;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Of, Topic, Premises, Parts);

    /// <summary>A step and those inside its cases and rows.</summary>
    internal static IEnumerable<Step> Within(Step step) => step switch
    {
        Split split => split.Cases.SelectMany(c => c.Steps).SelectMany(Within).Prepend(step),
        Series series => series.Rows.SelectMany(r => r.Cells).SelectMany(Within).Prepend(step),
        _ => [step],
    };
}
