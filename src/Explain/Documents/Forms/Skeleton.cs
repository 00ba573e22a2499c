namespace Explain;

/// <summary>Tells whether cases take the same steps, so that one table holds them.</summary>
internal static class Skeleton
{
    public static bool IsShared(Items<Case> cases) => cases.Count > 1 && cases.All(c => c.End == CaseEnd.Holds && c.Steps.Count > 0 && IsSame(c.Steps, cases[0].Steps));

    private static bool IsSame(Items<Step> steps, Items<Step> others) => steps.Count == others.Count
        && steps.Zip(others).All(p => IsSame(p.First, p.Second));

    private static bool IsSame(Step step, Step other) => (step, other) switch
    {
        (Calculation c, Calculation o) => c.Target == o.Target,
        (Deduction, Deduction) => step.Why.Rule == other.Why.Rule,
        _ => false,
    };
}
