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

    /// <summary>The answer to one thing asked.</summary>
    /// <param name="find">The words of <c>find</c>, or any that ask for the same: <c>BA</c> for <c>AB</c>.</param>
    /// <exception cref="ArgumentException">It was not asked for.</exception>
    public Answer this[string find]
    {
        get
        {
            Answer[] answers = [.. Parts.SelectMany(p => p.Answers)];
            return answers.FirstOrDefault(a => a.For.AsTyped == find)
                ?? (GoalReader.Read(find.Trim(), out _) is { } goal ? answers.FirstOrDefault(a => a.For with { AsTyped = goal.AsTyped, Letter = null, At = default } == goal) : null)
                ?? throw new ArgumentException(find, nameof(find));
        }
    }

    /// <summary>
    /// Evaluates every claim again with changes, without solving afresh: each value from the givens, each comparison, case and direction
    /// anew. What does not stand any more is in <see cref="Replay.Broken"/>; a claim that rests on it has no value. Where nothing is broken,
    /// the argument is one for the changed problem as well, and its values are those of the changed problem.
    /// </summary>
    /// <param name="changes">The changes, not more than one of a claim.</param>
    /// <exception cref="ArgumentException">
    /// A change does not fit: no such claim, two changes of one, a given that is none or states no value, a step without a value, a unit of
    /// another kind, ends of a range that are not rational or in the wrong order, a value that is not exact, a formula in what is not known
    /// before its step.
    /// </exception>
    public Replay Replay(params Items<Change> changes) => new Rerun(this, changes).Run();

    /// <inheritdoc/>
    public bool Equals(Solution? other) => other is not null && Of == other.Of && Topic == other.Topic && Premises == other.Premises
        && Parts == other.Parts && Theorems == other.Theorems && Warnings == other.Warnings && Cautions == other.Cautions;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Of, Topic, Premises, Parts);

    /// <summary>A step and those inside its cases and rows.</summary>
    internal static IEnumerable<Step> Within(Step step) => step switch
    {
        Split split => split.Cases.SelectMany(c => c.Steps).SelectMany(Within).Prepend(step),
        Quadratic quadratic => [step, quadratic.Linear, quadratic.Constant, .. quadratic.Roots],
        Series series => series.Rows.SelectMany(r => r.Cells).SelectMany(Within).Prepend(step),
        _ => [step],
    };
}
