namespace Explain;

/// <summary>
/// Turns "this rule, this one unknown" into steps. What can be reached by formulas is reached; where only the sine of an
/// angle can be found, the work divides into its two cases.
/// </summary>
internal sealed class Working(RuleBook book, Items<CostedRule> rules)
{
    /// <summary>The steps that reach every goal, or null when some goal cannot be reached.</summary>
    public Reached? Reach(Ledger ledger, IReadOnlyList<Symbol> goals)
    {
        Symbol[] wanted = [.. goals.Select(ledger.Arrangement.Canonical).Where(g => !ledger.Knows(g))];
        Routes routes = new(ledger.Costs, Edges.Of(rules, book, ledger));
        if (wanted.All(routes.Reaches)) return Emit(ledger, routes, wanted);
        return AmbiguousSine(ledger, routes) is { } sine ? Divide(ledger, routes, sine, wanted) : null;
    }

    /// <summary>Whether every goal can be reached from what is known, by formulas alone.</summary>
    public bool Reaches(Ledger ledger, IEnumerable<Symbol> goals)
    {
        Routes routes = new(ledger.Costs, Edges.Of(rules, book, ledger));
        return goals.Select(ledger.Arrangement.Canonical).All(routes.Reaches);
    }

    private static Reached Emit(Ledger ledger, Routes routes, IEnumerable<Symbol> wanted)
    {
        HashSet<Symbol> done = [];
        List<Step> steps = [];
        foreach (Edge edge in wanted.SelectMany(w => routes.To(w, done)))
        {
            if (Calculate.Step(ledger, edge) is not { } step) return new Reached([.. steps], Impossible: true);
            steps.Add(step);
        }

        return new Reached([.. steps], Impossible: false);
    }

    private static Ratio? AmbiguousSine(Ledger ledger, Routes routes) =>
        ledger.Facts.Where(f => f.Kind == PlaceKind.Triangle).SelectMany(TriangleParts.Angles)
            .Select(a => new Ratio(Function.Sine, ledger.Arrangement.Canonical(a)))
            .Where(r => routes.Reaches(r) && !routes.Reaches(r.Of)).OrderBy(routes.CostOf).FirstOrDefault();

    /// <summary>A sine of 1 belongs to one angle, the right angle.</summary>
    private Reached? OneAngle(Ledger ledger, Reached before, Ratio sine, Symbol[] wanted)
    {
        Calculation right = Calculate.Step(ledger, new Cases(book, this, ledger, sine).EdgeOf(ledger, "angle-from-sine"))!;
        return Reach(ledger, wanted) is { } rest ? rest with { Steps = [.. before.Steps, right, .. rest.Steps] } : null;
    }

    private Reached? Divide(Ledger ledger, Routes routes, Ratio sine, Symbol[] wanted)
    {
        Reached before = Emit(ledger, routes, [sine]);
        if (before.Impossible || ledger.Compare(new SymbolUse(sine), 1) is not <= 0) return before with { Impossible = true };
        if (ledger.Compare(new SymbolUse(sine), 1) == 0) return OneAngle(ledger, before, sine, wanted);
        Cases cases = new(book, this, ledger, sine);
        return cases.Split(wanted) is { } split ? new Reached([.. before.Steps, split], cases.Held.Count == 0, cases.Held) : null;
    }
}
