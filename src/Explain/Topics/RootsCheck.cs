namespace Explain;

/// <summary>
/// Checks the triangles that two sides and an angle not between them give: by the cosine rule the third side is a root of a
/// quadratic equation, and this has no more roots than there are triangles, apart from those that are no length.
/// </summary>
internal sealed class RootsCheck(RuleBook book, Ledger ledger, SwingingSide given, Point? foot)
{
    private static readonly Items<CostedRule> Onward = [new(TriangleRules.Book.CosineRule, 1), new(InverseRules.Book.AngleFromCosine, 0.5, Targets: 1)];

    private readonly Length side = (Length)ledger.Arrangement.Canonical(new Length(given.Start, given.Moving));

    /// <summary>The check; null where the equation cannot be set up.</summary>
    /// <param name="cases">Each triangle found, with what is known in it; empty where the work did not divide.</param>
    /// <param name="answers">The quantities that answer.</param>
    /// <param name="letter">The letter to write for the third side.</param>
    public Passage? Of(Items<(string Name, Ledger Ledger)> cases, IEnumerable<Symbol> answers, Letter letter)
    {
        if (Law() is not { } law || Quadratics.Step(ledger, law, side, letter) is not { } quadratic) return null;
        Symbol[] wanted = [.. answers.Select(ledger.Arrangement.Canonical).Where(a => a is Length or Angle).Distinct()];
        (Calculation Root, Ledger Found)[] found = cases.Count == 0 ? [(quadratic.Roots[0], ledger)]
            : [.. cases.Select(c => (c.Name == "1" ? quadratic.Roots[0] : quadratic.Roots[^1], c.Ledger))];
        Step[] agreeing = [.. found.SelectMany(f => wanted.Contains(side) ? [Agrees(side, f.Root.Id, f.Found)] : Further(f.Root, f.Found, wanted))];
        return new(PassageUse.Check, [quadratic, .. agreeing, Count(quadratic, found.Length), .. found.Length == 2 && foot is not null ? Middle(quadratic) : []]);
    }

    private Instance? Law() => Instances.Of(book.Find(TriangleRules.Book.CosineRule.Id)!, ledger.Facts, ledger.Arrangement)
        .FirstOrDefault(i => i.Quantities(ledger.Arrangement).ToArray() is [_, var beside, var third, _] && beside == given.Beside && third == side);

    private Deduction Agrees(Symbol quantity, ClaimId again, Ledger found)
    {
        ClaimId first = found.ClaimOf(quantity);
        return new(ledger.NextStep(), Compare.Equal(quantity, new ValueOf(first)), new RuleUse(new("same-quantity"), [], [again, first]));
    }

    /// <summary>Where the third side was not asked for, the answers are found again from its root.</summary>
    private IEnumerable<Step> Further(Calculation root, Ledger at, Symbol[] wanted)
    {
        Symbol[] found = [.. wanted.Where(w => !ledger.Knows(w) || !ledger.ClaimOf(w).IsGiven)];
        Ledger other = found.Aggregate(ledger.Without(side), (soFar, w) => soFar.Without(w));
        other.Learn(side, root.Id, SolvedFor(root));
        if (new Working(book, Onward).Reach(other, wanted) is not { Impossible: false, Cases.Count: 0 } reached) return [];
        ledger.After(other);
        return [.. reached.Steps, .. found.Select(w => Agrees(w, other.ClaimOf(w), at))];
    }

    private static Expr SolvedFor(Calculation root) => root.Formula.Substitute(e => e is SymbolUse use ? root.Bindings.First(b => b.Of == use.Symbol).Is : null);

    private Deduction Count(Quadratic quadratic, int found)
    {
        Relation? other = quadratic.Roots is [_, var lesser] ? Evaluator.Sign(ledger.Closing.Close(new ValueOf(lesser.Id))) switch { > 0 => Relation.Greater, 0 => Relation.Equal, _ => Relation.Less } : null;
        string rule = other switch
        {
            null => "only-root",
            Relation.Less => "other-root-is-negative",
            Relation.Equal => "other-root-is-zero",
            _ => found == 2 ? "both-roots" : "other-root-is-excluded",
        };
        Role[] start = other == Relation.Equal ? [new("start", new Objects([given.Start]), IsCondition: false)] : [];
        ClaimId[] excluding = rule == "other-root-is-excluded" ? [Excluding()] : [];
        RuleUse why = new(new(rule), [new("moving", new Objects([given.Moving]), IsCondition: false), .. start], [quadratic.Id, .. excluding])
        {
            When = other is { } relation ? [Compare.Of(new ValueOf(quadratic.Roots[1].Id), relation, new Quantity(Exact.Zero, Unit.Metre))] : [],
        };
        return new(ledger.NextStep(), CountPattern.Of((Polygon)ledger.Facts.First(f => f.Kind == PlaceKind.Triangle).Of[0], other == Relation.Greater ? 2 : 1), why);
    }

    /// <summary>What the question says of the angle at the moving corner.</summary>
    private ClaimId Excluding() => ledger.ClaimOf(ledger.Facts.First(f => f is { Kind: PlaceKind.Acute or PlaceKind.Obtuse, Of: [Corner { Vertex: var at }] } && at == given.Moving))!.Value;

    /// <summary>The foot of the height is midway between the two places.</summary>
    private IEnumerable<Step> Middle(Quadratic quadratic)
    {
        Symbol part = ledger.Arrangement.Canonical(new Length(given.Start, foot!));
        if (new Working(book, [new(RightAngleRules.Book.CosineRatio, 1)]).Reach(ledger, [part]) is not { Impossible: false, Cases.Count: 0 } reached) return [];
        Expr half = (new ValueOf(quadratic.Roots[0].Id) + new ValueOf(quadratic.Roots[1].Id)) / 2;
        ClaimId drawn = ledger.ClaimOf(ledger.Facts.First(f => f.Kind == PlaceKind.Foot && f.Of[0] == foot))!.Value;
        Role[] roles = [new("foot", new Objects([foot!]), IsCondition: false), new("moving", new Objects([given.Moving]), IsCondition: false)];
        return [.. reached.Steps, new Deduction(ledger.NextStep(), Compare.Equal(part, half), new RuleUse(new("midway-between-roots"), [.. roles], [quadratic.Id, drawn, ledger.ClaimOf(part)]))];
    }
}
