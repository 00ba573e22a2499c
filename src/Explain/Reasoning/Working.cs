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
        Symbol[] wanted = [.. goals.Select(ledger.Arrangement.Canonical).Where(g => !ledger.Knows(g)).Distinct()];
        Routes routes = Open(ledger);
        if (!wanted.All(routes.Reaches)) return AmbiguousSine(ledger, routes) is { } sine ? Divide(ledger, sine, wanted) : null;
        return new ThirdAngle(book, rules).Of(ledger, routes, wanted) is { } third ? Emit(ledger, [third, .. wanted]) : Emit(ledger, wanted);
    }

    /// <summary>Whether every goal can be reached from what is known, by formulas alone.</summary>
    public bool Reaches(Ledger ledger, IEnumerable<Symbol> goals)
    {
        Routes routes = Open(ledger);
        return goals.Select(ledger.Arrangement.Canonical).All(routes.Reaches);
    }

    /// <summary>The ledger with everything that these rules reach without a goal.</summary>
    public Ledger Spread(Ledger ledger)
    {
        Items<Edge> edges = Edges.Of(rules, book, ledger);
        Routes routes = new(ledger.Costs, edges);
        Emit(ledger, edges.Select(e => e.Target).Where(routes.Reaches).Distinct());
        return ledger;
    }

    private Routes Open(Ledger ledger) => new(ledger.Costs, Edges.Of(rules, book, ledger));

    /// <summary>One goal after another, the nearest next: what one has found helps to find the others.</summary>
    private Reached Emit(Ledger ledger, IEnumerable<Symbol> wanted)
    {
        List<Symbol> left = [.. wanted.Where(w => !ledger.Knows(w))];
        List<Step> steps = [];
        while (left.Count > 0)
        {
            Routes routes = Open(ledger);
            Symbol next = left.OrderBy(routes.CostOf).First();
            foreach (Edge edge in routes.To(next, []))
            {
                if (Calculate.Step(ledger, edge) is not { } step) return new Reached([.. steps], Impossible: true);
                steps.Add(step);
            }

            left.RemoveAll(ledger.Knows);
        }

        return new Reached([.. steps], Impossible: false);
    }

    private static Ratio? AmbiguousSine(Ledger ledger, Routes routes) =>
        ledger.Facts.Where(f => f.Kind == PlaceKind.Triangle && IsOblique(f, ledger)).SelectMany(TriangleParts.Angles)
            .Select(a => new Ratio(Function.Sine, ledger.Arrangement.Canonical(a)))
            .Where(r => routes.Reaches(r) && !routes.Reaches(r.Of)).OrderBy(routes.CostOf).FirstOrDefault();

    /// <summary>Whether no angle of the triangle is known to be a right angle, beside which every angle is acute.</summary>
    private static bool IsOblique(Place triangle, Ledger ledger) =>
        TriangleParts.Angles(triangle).Where(ledger.Knows).All(a => ledger.Compare(a, Expr.Degrees(90)) != 0);

    /// <summary>A sine of 1 belongs to one angle, the right angle.</summary>
    private Reached? OneAngle(Ledger ledger, Reached before, Ratio sine, Symbol[] wanted) =>
        Calculate.Step(ledger, new Cases(book, this, ledger, sine).EdgeOf(ledger, "angle-from-sine")) is { } right && Reach(ledger, wanted) is { } rest
            ? rest with { Steps = [.. before.Steps, right, .. rest.Steps] } : null;

    private Reached? Divide(Ledger ledger, Ratio sine, Symbol[] wanted)
    {
        Reached before = Emit(ledger, [sine]);
        if (before.Impossible || ledger.Compare(new SymbolUse(sine), 1) is not <= 0) return before with { Impossible = true };
        if (ledger.Compare(new SymbolUse(sine), 1) == 0) return OneAngle(ledger, before, sine, wanted);
        Cases cases = new(book, this, ledger, sine);
        return cases.Split(wanted) is { } split ? new Reached([.. before.Steps, split], cases.Held.Count == 0, cases.Held) : null;
    }
}
