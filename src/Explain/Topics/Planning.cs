namespace Explain;

/// <summary>The plan of a page: the chain of rules that its steps will use, and what each gives.</summary>
internal static class Planning
{
    public static Items<Remark> Of(IReadOnlyCollection<Step> steps, Problem problem)
    {
        List<Phrase> chain = [];
        List<Calculation> run = [];
        foreach (Calculation step in steps.OfType<Calculation>().TakeWhile(c => !IsHeight(c, steps)))
        {
            if (run.Count > 0 && Family(run[^1]) != Family(step)) Close(run, chain);
            run.Add(step);
        }

        Close(run, chain);
        Phrase? all = chain.Count == 0 ? null : chain.Aggregate((first, next) => TopicPhrases.PlanThen(first, next));
        IEnumerable<Phrase> heights = problem.Find.Select(g => g.Wanted).OfType<DistanceToLine>().Distinct().Take(1).Select(d => steps.OfType<Instruction>().Any() ? TopicPhrases.Height(d.To) : TopicPhrases.Side(d.To));
        return [.. (all is null ? heights : heights.Prepend(all)).Select(p => new Remark(p, null))];
    }

    /// <summary>An angle from its cosine belongs to the cosine rule that gave the cosine.</summary>
    private static string Family(Calculation step) => step.Why.Rule.Name == "angle-from-cosine" ? "cosine-rule" : step.Why.Rule.Name;

    private static bool IsHeight(Calculation step, IReadOnlyCollection<Step> steps) =>
        steps.OfType<Instruction>().SelectMany(i => i.Makes).OfType<Point>().Any(Mentions.Points(step.Target).Contains);

    private static void Close(List<Calculation> run, List<Phrase> chain)
    {
        if (run.Count == 0) return;
        Items<Symbol> found = [.. run.Select(c => c.Target is Ratio r ? r.Of : c.Target).Distinct()];
        chain.Add(run[0].Why.Rule.Name switch
        {
            "angle-sum-of-a-triangle" => TopicPhrases.PlanAngleSum(found),
            "sine-rule" => TopicPhrases.PlanSineRule(found),
            "cosine-rule" or "angle-from-cosine" => TopicPhrases.PlanCosineRule(found),
            _ => TopicPhrases.PlanFind(found),
        });
        run.Clear();
    }
}
