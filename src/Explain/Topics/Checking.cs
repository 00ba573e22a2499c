namespace Explain;

/// <summary>
/// Finds a quantity a second time, by rules that the working did not use where there are such, and compares. Where every way
/// comes back to a rule of the working, the check tests the arithmetic only and is headed so.
/// </summary>
internal sealed class Checking(RuleBook book, Topic topic)
{
    public Passage? Of(Ledger ledger, IReadOnlyCollection<Step> working)
    {
        HashSet<RuleId> used = [.. working.SelectMany(Solution.Within).Select(s => s.Why.Rule)];
        Items<CostedRule> fresh = [.. topic.Checks.Where(c => !used.Contains(c.Rule.Id))];
        if (Steps(ledger, fresh) is { } check) return new(PassageUse.Check, check);
        return Steps(ledger, topic.Checks) is { } arithmetic ? new(PassageUse.ArithmeticCheck, arithmetic) : null;
    }

    private Items<Step>? Steps(Ledger ledger, Items<CostedRule> rules) =>
        ledger.Known.Where(k => k is Length or Angle).Select(k => Again(ledger, rules, k)).OfType<Items<Step>?>().FirstOrDefault(s => s is not null);

    private Items<Step>? Again(Ledger ledger, Items<CostedRule> rules, Symbol target)
    {
        Ledger other = ledger.Without(target);
        if (new Working(book, rules).Reach(other, [target]) is not { Impossible: false, Cases.Count: 0, Steps.Count: > 0 } found) return null;
        if (!found.Steps.OfType<Calculation>().SelectMany(c => c.Bindings).Any(b => b.Is is ValueOf v && !v.Claim.IsGiven)) return null;
        ClaimId again = other.ClaimOf(target), first = ledger.ClaimOf(target), id = other.NextStep();
        ledger.After(other);
        Compare says = Compare.Equal(target, new ValueOf(first));
        return [.. found.Steps, new Deduction(id, says, new RuleUse(new("same-quantity"), [], [again, first]))];
    }
}
