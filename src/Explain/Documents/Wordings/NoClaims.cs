namespace Explain;

/// <summary>Where a phrase is said outside a solution: claims go by their ids.</summary>
internal sealed class NoClaims : IClaims
{
    public static readonly NoClaims All = new();

    private NoClaims()
    {
    }

    public Claimed? Find(ClaimId id) => null;

    public ClaimValue? ValueOf(ClaimId id) => null;

    public string? NumberOf(ClaimId id) => id.Name;

    public Value? Evaluate(Expr expr) => null;
}
