namespace Explain;

/// <summary>One case of a split. A claim inside a case that holds may be used after the split.</summary>
/// <param name="Name">A number: 1, 2, …</param>
/// <param name="Assume">What the case supposes.</param>
/// <param name="Steps">What follows in this case.</param>
/// <param name="End">How it ends.</param>
public sealed record Case(string Name, Statement Assume, Items<Step> Steps, CaseEnd End)
{
    /// <summary>What a page calls the case, and the claim of the case that makes it so; null where it is named by what it supposes.</summary>
    public Remark? Label { get; init; }

    /// <summary>The name by which steps of a case refer to what it supposes.</summary>
    internal static ClaimId Supposed(ClaimId split, string name) => new($"{split.Name}.{name}");
}
