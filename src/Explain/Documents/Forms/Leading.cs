namespace Explain;

/// <summary>Cases that begin alike: each with a value of the same angle, then tests of it.</summary>
internal static class Leading
{
    public static bool Is(Split split) => split.Cases.Count > 1 && split.Cases.All(c => c.Steps is [Calculation { Target: Angle } value, Deduction, ..]
        && value.Target == ((Calculation)split.Cases[0].Steps[0]).Target);

    public static Calculation Value(Case one) => (Calculation)one.Steps[0];

    public static Items<Step> Tests(Case one) => [.. one.Steps.Skip(1).TakeWhile(s => s is Deduction)];

    /// <summary>What is left to do in the cases that hold.</summary>
    public static Items<Case> Rest(Split split) =>
        [.. split.Cases.Where(c => c.End == CaseEnd.Holds).Select(c => c with { Steps = [.. c.Steps.Skip(1 + Tests(c).Count)] }).Where(c => c.Steps.Count > 0)];
}
