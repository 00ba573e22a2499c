namespace Explain;

/// <summary>The claims that a step may rest on where it stands.</summary>
internal sealed class Seen
{
    private readonly Dictionary<ClaimId, Testimony> claims;

    public Seen() => claims = [];

    private Seen(Seen other) => claims = new(other.claims);

    public IEnumerable<Testimony> All => claims.Values;

    public Seen Fork() => new(this);

    public bool Add(Testimony testimony) => claims.TryAdd(testimony.Claim.Id, testimony);

    public Testimony? Find(ClaimId id) => claims.GetValueOrDefault(id);

    public IEnumerable<Testimony> Of(Items<ClaimId> ids) => ids.Select(Find).OfType<Testimony>();

    /// <summary>The formula with every value that it names put in; null when it names one that is not seen.</summary>
    public Expr? Close(Expr expr) => expr.Claims().All(c => Find(c)?.Closed is not null)
        ? expr.Substitute(e => e is ValueOf value ? Find(value.Claim)!.Closed : null) : null;

    /// <summary>The formula in the measured quantities; null when it names a value that is not seen.</summary>
    public Expr? Open(Expr expr) => expr.Claims().All(c => Find(c)?.Open is not null)
        ? expr.Substitute(e => e is ValueOf value ? Find(value.Claim)!.Open : null) : null;

    /// <summary>Takes over what the cases that hold have added.</summary>
    public void Take(Seen other)
    {
        foreach (Testimony testimony in other.All) claims.TryAdd(testimony.Claim.Id, testimony);
    }
}
