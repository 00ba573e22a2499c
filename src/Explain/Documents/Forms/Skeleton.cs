namespace Explain;

/// <summary>Tells whether cases take the same steps, so that one table holds them.</summary>
internal static class Skeleton
{
    public static bool IsShared(Items<Case> cases) => cases.Count > 1 && cases.All(c => c.End == CaseEnd.Holds && c.Steps.Count > 0 && IsSame(c.Steps, cases[0].Steps));

    private static bool IsSame(Items<Step> steps, Items<Step> others) => steps.Count == others.Count
        && steps.Zip(others).All(p => p.First.GetType() == p.Second.GetType() && p.First.Why.Rule == p.Second.Why.Rule && p.First is Calculation or Deduction);
}
