namespace Explain;

/// <summary>The plan of a page: the chain of rules that its steps will use, and what each gives.</summary>
internal static class Planning
{
    public static Items<Remark> Of(IReadOnlyCollection<Step> steps, Problem problem)
    {
        List<Phrase> chain = [];
        List<Calculation> run = [];
        if (steps.OfType<Algebra>().FirstOrDefault() is { } algebra) chain.Add(TopicPhrases.PlanEquation(algebra.For));
        foreach (Calculation step in steps.OfType<Calculation>().Where(c => !Letters.PutsIn(c)).TakeWhile(c => !IsHeight(c, steps)))
        {
            bool fromRatio = run is [.., { Target: Ratio { Of: var of } }] && step.Target == of;
            if (run.Count > 0 && !fromRatio && Family(run[^1]) != Family(step)) Close(run, chain);
            run.Add(step);
        }

        Close(run, chain);
        Phrase? all = chain.Count == 0 ? null : chain.Aggregate((first, next) => TopicPhrases.PlanThen(first, next));
        IEnumerable<Phrase> heights = problem.Find.Select(g => g.Wanted).OfType<DistanceToLine>().Distinct().Take(1).Where(_ => steps.Any(IsPerpendicular)).Select(d => steps.OfType<Instruction>().Any() ? TopicPhrases.Height(d.To) : TopicPhrases.Side(d.To));
        return [.. (all is null ? heights : heights.Prepend(all)).Select(p => new Remark(p, null))];
    }

    /// <summary>An angle from its ratio belongs to the rule that gave the ratio; the ratios of a right-angled triangle go together, and so do equal sides and angles, and half a perimeter with Heron's formula.</summary>
    private static string Family(Calculation step) => step.Why.Rule.Name switch
    {
        "angle-from-cosine" => "cosine-rule",
        "sine-ratio" or "cosine-ratio" or "tangent-ratio" or "angle-from-tangent" or "acute-angle-from-sine" or "acute-angles-of-a-right-angled-triangle" => "ratios",
        "equal-sides" or "equal-angles" or "isosceles-triangle" or "isosceles-triangle-converse" or "isosceles-angle-sum" or "equal-angles-sum" => "equals",
        "half-perimeter-from-sides" or "half-perimeter" => "herons-formula",
        var name => name,
    };

    /// <summary>Whether a step draws a perpendicular or finds it among the sides.</summary>
    private static bool IsPerpendicular(Step step) => step is Instruction || step.Why.Rule.Name == "perpendicular-side";

    private static bool IsHeight(Calculation step, IReadOnlyCollection<Step> steps) =>
        steps.OfType<Instruction>().SelectMany(i => i.Makes).OfType<Point>().Any(Mentions.Points(step.Target).Contains);

    private static void Close(List<Calculation> run, List<Phrase> chain)
    {
        if (run.Count == 0) return;
        Items<Symbol> found = [.. run.Select(c => c.Target is Ratio r ? r.Of : c.Target).Distinct()];
        chain.Add(Family(run[0]) switch
        {
            _ when run.Any(c => c.Why.Rule.Name == "herons-formula") => TopicPhrases.PlanHeronsFormula([.. found.Where(f => f is not Measure { Kind: MeasureKind.HalfPerimeter })]),
            "area-from-two-sides" when found is [Measure] => TopicPhrases.PlanAreaFromTwoSides(found),
            "angle-sum-of-a-triangle" => TopicPhrases.PlanAngleSum(found),
            "sine-rule" => TopicPhrases.PlanSineRule(found),
            "cosine-rule" => TopicPhrases.PlanCosineRule(found),
            "pythagoras" => TopicPhrases.PlanPythagoras(found),
            "ratios" => TopicPhrases.PlanRatios(found),
            "equals" => TopicPhrases.PlanEquals(found),
            _ => TopicPhrases.PlanFind(found),
        });
        run.Clear();
    }
}
