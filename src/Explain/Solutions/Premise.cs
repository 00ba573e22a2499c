namespace Explain;

/// <summary>A claim to begin with.</summary>
/// <param name="Id">Its name: g1, f1 or a1.</param>
/// <param name="Says">What is claimed.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record Premise(ClaimId Id, Statement Says, Source Source) : Claimed(Id, Says)
{
    /// <summary>By how much a measured value may be wrong either way; null when it is taken as exact.</summary>
    public Expr? Within { get; init; }

    /// <summary>What the values of claims must satisfy for it to be true: three sides close a triangle, a given agrees with what the others fix.</summary>
    public Items<Compare> Needs { get; init; }
}
