namespace Explain;

/// <summary>Walks the claims of a solution in order and works each out again with the changes.</summary>
internal sealed class Rerun
{
    private readonly Solution solution;
    private readonly Items<Change> all;
    private readonly Changed changes;
    private readonly Track track;
    private readonly Redo redo;

    /// <exception cref="ArgumentException">A change does not fit the solution.</exception>
    public Rerun(Solution solution, Items<Change> changes)
    {
        (this.solution, all, this.changes) = (solution, changes, new(solution, changes));
        Items<Point> points = [.. solution.Of.Figure.SelectMany(f => Mentions.Points(f.Says)).Distinct()];
        track = new(new Rays(solution.Of).Lines.Aggregate(new Arrangement([], points), (soFar, line) => soFar.With(line)));
        redo = new(track, this.changes);
    }

    public Replay Run()
    {
        foreach (Premise premise in solution.Premises) redo.Begin(premise);
        foreach (Premise premise in solution.Premises) redo.Need(premise);
        foreach (Step step in solution.Parts.SelectMany(p => p.Passages).SelectMany(p => p.Steps)) Take(step);
        foreach (Answer answer in solution.Parts.SelectMany(p => p.Answers)) Answer(answer);
        return new(solution, all, track.Values, track.Broken);
    }

    private void Take(Step step, bool inCase = false, bool isCell = false)
    {
        bool isChanged = changes.Of(step.Id) is not null;
        Break? fails = isChanged ? null : redo.Compared(step, inCase);
        if (fails is { } why) track.Break(step.Id, why);
        if (fails is not null || redo.RestsOnLost(step)) track.Lose(step);
        else if (step is Split split) Divide(split);
        else if (step is Series series) Tabulate(series);
        else if (step is Quadratic quadratic) track.Apart(() => redo.Roots(quadratic));
        else redo.Step(step, isCell);
    }

    private void Divide(Split split)
    {
        foreach (Case one in split.Cases)
        {
            track.Apart(() =>
            {
                foreach (Step step in one.Steps) Take(step, inCase: true);
                if (!one.Steps.Any(s => track.IsLost(s.Id)) && redo.Assumed(one) is { } why) track.Break(split.Id, why);
            });
        }
    }

    private void Tabulate(Series series)
    {
        foreach (SeriesRow row in series.Rows)
            track.Apart(() => { foreach (Step cell in row.Cells) Take(cell, isCell: true); });
        if (series.Rows.SelectMany(r => r.Cells).Any(c => track.IsLost(c.Id))) track.Lose(series);
    }

    /// <summary>Bounds that were found by dividing the box are shown otherwise where the directions prove them.</summary>
    private void Answer(Answer answer)
    {
        bool isShown = !solution.Steps.OfType<Split>().Any() && (answer.For.Kind == GoalKind.Bounds || solution.Of.Find.All(g => g.Kind != GoalKind.Bounds));
        foreach (AnswerValue value in answer.Values.Where(v => v.Bounds is { Proof: Subdivided } && !track.IsLost(v.From)))
            if (redo.Bounds(value.From, isShown, isAsked: answer.For.Kind == GoalKind.Bounds) is { } why) track.Break(value.From, why);
    }
}
