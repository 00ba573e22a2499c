namespace Explain;

/// <summary>Sees whether a third angle, found first, makes a triangle special: right-angled, or with two equal angles.</summary>
internal sealed class ThirdAngle(RuleBook book, Items<CostedRule> rules)
{
    /// <summary>The angle to find first, where the way to the goals is then cheaper; null where it is not.</summary>
    /// <param name="ledger">What is known.</param>
    /// <param name="routes">The ways from there.</param>
    /// <param name="wanted">The goals, all within reach.</param>
    public Symbol? Of(Ledger ledger, Routes routes, IReadOnlyList<Symbol> wanted)
    {
        foreach (Place triangle in ledger.Facts.Where(f => f.Kind == PlaceKind.Triangle))
        {
            Angle[] open = [.. TriangleParts.Angles(triangle).Select(ledger.Arrangement.Canonical).Where(a => !ledger.Knows(a))];
            if (open is not [var third] || TriangleParts.Sides((Polygon)triangle.Of[0]).All(ledger.Knows)) continue;
            if (Found(ledger, routes, third) is { } after && IsSpecial(after, triangle, third) && wanted.Sum(Open(after).CostOf) + 1 < wanted.Sum(routes.CostOf)) return third;
        }

        return null;
    }

    private static Ledger? Found(Ledger ledger, Routes routes, Angle third)
    {
        if (!routes.Reaches(third)) return null;
        Ledger after = ledger.Fork();
        return routes.To(third, []).All(e => Calculate.Step(after, e) is not null) ? after : null;
    }

    private static bool IsSpecial(Ledger after, Place triangle, Angle third) => after.Compare(third, Expr.Degrees(90)) == 0
        || TriangleParts.Angles(triangle).Select(after.Arrangement.Canonical).Any(a => a != third && after.Compare(a, third) == 0);

    private Routes Open(Ledger ledger) => new(ledger.Costs, Edges.Of(rules, book, ledger));
}
