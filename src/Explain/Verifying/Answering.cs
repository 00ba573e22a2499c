namespace Explain;

/// <summary>Whether every goal is answered, by claims that were made, in every figure.</summary>
internal sealed class Answering(Solution solution, BoundsChecks bounding, IIndependentModel model, Items<Layout> figures, int bits)
{
    private readonly BoxSamples samples = new(solution, model, bits);

    public IEnumerable<Finding> Findings(Seen seen)
    {
        foreach (Goal goal in solution.Of.Find.Concat(solution.Parts.SelectMany(p => p.Asked)).Distinct())
        {
            AnswerValue[] values = [.. solution.Parts.SelectMany(p => p.Answers).Where(a => a.For == goal).SelectMany(a => a.Values)];
            if (values.Length == 0) yield return new("V1", null, "no-answer " + goal.AsTyped);
            foreach (AnswerValue value in values)
                if (Fault(goal, value, seen) is { } fault) yield return fault;
            foreach (IGrouping<string?, AnswerValue> item in values.Where(v => v.Bounds is not null).GroupBy(v => v.Item))
                if (Wanted(goal, item.First()) is { } wanted && !samples.Stays(wanted, [.. item.Select(v => v.Bounds!)]))
                    yield return new("V4", item.First().From, "bounds-in-figures " + goal.AsTyped);
            foreach (IGrouping<string?, AnswerValue> item in values.GroupBy(v => v.Item))
                if (!item.SelectMany(v => seen.Find(v.From)?.Figures ?? []).Distinct().Order().SequenceEqual(Enumerable.Range(0, figures.Count)))
                    yield return new("V5", null, "answers " + goal.AsTyped);
        }
    }

    private Finding? Fault(Goal goal, AnswerValue answer, Seen seen)
    {
        if (goal.Kind == GoalKind.Count) return Counts(answer, seen) ? null : new("V5", answer.From, "count-answer");
        if (seen.Find(answer.From) is not { Closed: { } closed } from) return new("V1", answer.From, "answer-not-claimed");
        if (answer.Value is not { } value) return new("V1", answer.From, "answer-without-value");
        Enclosure claimed = GivenNumbers.In(value, bits);
        if (Agreement.Number(closed, bits) is not { } own || !Agreement.Of(own, claimed)) return new("V4", answer.From, "answer");
        if (answer.Bounds is { } bounds && !(from.Claim is Series series ? BoundsChecks.Ends(series, bounds, bits) : Wanted(goal, answer) is { } bounded && bounding.Are(bounds, bounded, from))) return new("V4", answer.From, "bounds");
        return Wanted(goal, answer) is { } wanted && (wanted is Letter || from.Figures.All(i => figures[i].Measure(wanted) is { } measured && Agreement.Of(measured, claimed)))
            ? null : new("V4", answer.From, "answer-in-figure");
    }

    private static Symbol? Wanted(Goal goal, AnswerValue answer) => answer.Item is { } item ? QuantityGrammar.Read(item) : goal.Wanted;

    private static bool Counts(AnswerValue answer, Seen seen) =>
        seen.Find(answer.From) is { Claim.Says: HowMany many } && answer.Value is { Exact: { } count } && count == Exact.Of(many.Count);
}
