namespace Explain;

/// <summary>What a teacher points out beside a step. Each remark carries what must hold for it to be true.</summary>
internal static class Noticing
{
    /// <summary>The steps of one part, with their remarks.</summary>
    /// <param name="steps">The steps.</param>
    /// <param name="ledger">What is known after them.</param>
    /// <param name="rounded">Claims that answered an earlier part and were rounded there.</param>
    public static Items<Step> In(Items<Step> steps, Ledger ledger, IReadOnlyCollection<ClaimId> rounded)
    {
        ClaimId? first = steps.OfType<Calculation>().FirstOrDefault(c => Unrounded(c, rounded) is not null)?.Id;
        return [.. steps.Select(s => s is Calculation c ? c with { Remarks = [.. c.Remarks, .. Size(c, steps, ledger), .. c.Id == first ? [Unrounded(c, rounded)!] : (Remark[])[]] } : s)];
    }

    /// <summary>What the third angle tells of the sides before they are found.</summary>
    private static IEnumerable<Remark> Size(Calculation step, Items<Step> steps, Ledger ledger)
    {
        if (step.Target is not Angle angle || step.Why.Rule != TriangleRules.Book.AngleSumOfATriangle.Id || ledger.TriangleOf(Mentions.Points(angle)) is not { } triangle) yield break;
        Length own = (Length)ledger.Arrangement.Canonical(new Length(angle.First, angle.Second));
        Symbol[] sides = [.. steps.OfType<Calculation>().Select(c => c.Target).Where(t => t != own && TriangleParts.Sides(triangle).Any(s => s == t))];
        if (!ledger.Knows(own) || !ledger.ClaimOf(own).IsGiven || sides.Length < 2) yield break;
        Symbol[] others = [.. TriangleParts.Angles(triangle).Select(a => ledger.Arrangement.Canonical((Symbol)a)).Where(a => a != step.Target)];
        foreach (Relation size in new[] { Relation.Less, Relation.Greater })
        {
            Compare[] all = [.. others.Select(o => Compare.Of(angle, size, o))];
            if (!all.All(ledger.Holds)) continue;
            Expr length = ledger.Evaluate(own) is { Exact: { } exact } value ? new Quantity(exact, value.Unit) : own;
            yield return new(size == Relation.Less ? TopicPhrases.Smallest(own, [.. sides], length) : TopicPhrases.Largest(own, [.. sides], length), new All([.. all]));
        }
    }

    private static Remark? Unrounded(Calculation step, IReadOnlyCollection<ClaimId> rounded) => step.Bindings
        .Where(b => b.Is is ValueOf v && rounded.Contains(v.Claim)).Select(b => new Remark(TopicPhrases.Unrounded(b.Of, ((ValueOf)b.Is).Claim), null)).FirstOrDefault();
}
