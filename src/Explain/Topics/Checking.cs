using System.Collections.Frozen;

namespace Explain;

/// <summary>
/// Finds givens, or else answers, a second time, by rules that the working did not use where there are such, and compares. Where
/// every way comes back to a rule of the working, the check tests the arithmetic only and is headed so.
/// </summary>
internal sealed class Checking(RuleBook book, Topic topic)
{
    /// <summary>Rules that a reader would not think of where others do.</summary>
    private static readonly FrozenSet<RuleId> OutOfTheWay = [CircleRules.Book.InscribedCircleOnASide.Id, AreaRules.Book.PerimeterAndSines.Id, AreaRules.Book.AreaFromASideAndTheAngles.Id];

    /// <summary>Checks that between them lean on as many of the answers as can be; none where no given can be found again.</summary>
    /// <param name="ledger">What is known.</param>
    /// <param name="working">The steps that must not be repeated; those that put a letter into a measurement state it.</param>
    /// <param name="answers">The claims that answer.</param>
    public IEnumerable<Passage> Of(Ledger ledger, IReadOnlyCollection<Step> working, IReadOnlyCollection<ClaimId> answers)
    {
        HashSet<RuleId> used = [.. working.SelectMany(Solution.Within).Select(s => s.Why.Rule)];
        used.UnionWith(topic.Working.Where(r => r.With is not null && used.Contains(r.Rule.Id)).Select(r => r.With!.Id).ToArray());
        HashSet<ClaimId> stated = [.. ledger.Known.Select(ledger.ClaimOf).Where(c => c.IsGiven), .. working.Where(Letters.PutsIn).Select(s => s.Id)];
        Items<CostedRule> fresh = [.. topic.Checks.Where(c => !used.Contains(c.Rule.Id))];
        Items<Step>[] plain = [.. Best(ledger, [.. fresh.Where(c => !OutOfTheWay.Contains(c.Rule.Id))], stated, answers)];
        Items<Step>[] best = plain.Length > 0 && Tested(plain).IsSupersetOf(answers) ? plain : [.. Best(ledger, fresh, stated, answers)];
        return best.Length > 0 ? best.Select(s => new Passage(PassageUse.Check, s))
            : Best(ledger, topic.Checks, stated, answers).Take(1).Select(s => new Passage(PassageUse.ArithmeticCheck, s));

        HashSet<ClaimId> Tested(IEnumerable<Items<Step>> all) => [.. all.SelectMany(Leant), .. all.SelectMany(s => s[^1].Why.From)];
    }

    /// <summary>The check that tests most answers, then whatever tests an answer that none before it tests.</summary>
    private IEnumerable<Items<Step>> Best(Ledger ledger, Items<CostedRule> rules, HashSet<ClaimId> stated, IReadOnlyCollection<ClaimId> answers)
    {
        Symbol[] known = [.. ledger.Known.Where(k => k is Length or Angle or Measure or DistanceToLine)];
        (Symbol Target, ClaimId[] Tested)[] ways = Ways(ledger, rules, known.Where(k => stated.Contains(ledger.ClaimOf(k))));
        if (ways.Length == 0) ways = Ways(ledger, rules, known.Where(k => !stated.Contains(ledger.ClaimOf(k))));
        HashSet<ClaimId> open = [.. answers];
        Ledger at = ledger;
        for (int i = 0; i < answers.Count; i++)
        {
            (Symbol Target, ClaimId[] Tested)[] next = [.. ways.Where(w => i == 0 || w.Tested.Any(open.Contains)).OrderByDescending(w => w.Tested.Count(open.Contains)).Take(1)];
            if (next is not [var way]) yield break;
            ways = [.. ways.Where(w => w.Target != way.Target)];
            // What an earlier check found may have made this way one whose digits cannot be told from exact ones.
            if (Again(ref at, ledger, rules, way.Target) is not { } steps) continue;
            open.ExceptWith(way.Tested);
            yield return steps;
        }
    }

    /// <summary>Each quantity that can be found again, with the claims that this leans on.</summary>
    private (Symbol, ClaimId[])[] Ways(Ledger ledger, Items<CostedRule> rules, IEnumerable<Symbol> targets) => [.. targets
        .Select(t => (t, Again(ledger.Without(t), ledger, rules, t) is { } steps ? (ClaimId[])[.. Leant(steps).Append(ledger.ClaimOf(t)).Distinct()] : [])).Where(w => w.Item2.Length > 0)];

    private static IEnumerable<ClaimId> Leant(Items<Step> steps) => steps.OfType<Calculation>().SelectMany(c => c.Bindings).Select(b => b.Is).OfType<ValueOf>().Select(v => v.Claim);

    /// <summary>Finds a quantity again, with what earlier checks found, and goes on from there.</summary>
    private Items<Step>? Again(ref Ledger at, Ledger ledger, Items<CostedRule> rules, Symbol target)
    {
        at = at.Without(target);
        if (Again(at, ledger, rules, target) is not { } steps) return null;
        ledger.After(at);
        return steps;
    }

    private Items<Step>? Again(Ledger other, Ledger ledger, Items<CostedRule> rules, Symbol target)
    {
        if (new Working(book, rules).Reach(other, [target]) is not { Impossible: false, Cases.Count: 0, Steps.Count: > 0 } found) return null;
        if (!Leant(found.Steps).Any(c => !c.IsGiven)) return null;
        ClaimId again = other.ClaimOf(target), first = ledger.ClaimOf(target);
        // A value whose digits cannot be told from those of an exact one cannot be printed.
        if (other.Evaluate(new ValueOf(again))!.Exact is null && ledger.Evaluate(new ValueOf(first))!.Exact is not null) return null;
        RuleId agrees = new(first.IsGiven ? "as-given" : "same-quantity");
        return [.. found.Steps, new Deduction(other.NextStep(), Compare.Equal(target, new ValueOf(first)), new RuleUse(agrees, [], [again, first]))];
    }
}
