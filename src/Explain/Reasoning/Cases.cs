namespace Explain;

/// <summary>The two angles of a triangle that have one sine, each followed to the goals or to where it cannot be.</summary>
internal sealed class Cases(RuleBook book, Working working, Ledger ledger, Ratio sine)
{
    private readonly Place triangle = ledger.Facts.First(f =>
        f.Kind == PlaceKind.Triangle && TriangleParts.Angles(f).Any(a => ledger.Arrangement.Canonical(a) == sine.Of));

    /// <summary>The cases that hold, with what is known in each.</summary>
    public Items<(string Name, Ledger Ledger)> Held { get; private set; }

    /// <summary>The split, with a claim for each goal in each case that holds; null when a goal stays out of reach.</summary>
    public Step? Split(IReadOnlyList<Symbol> wanted)
    {
        ClaimId id = ledger.NextStep();
        RuleUse why = Use("angles-with-one-sine", ledger, [sine]);
        List<Case> cases = [];
        foreach ((string name, string rule, Relation size) in
            new[] { ("1", "angle-from-sine", Relation.Less), ("2", "supplement-from-sine", Relation.Greater) })
        {
            if (One(ledger.ForCase(id, name), name, rule, size, wanted) is not { } one) return null;
            cases.Add(one);
        }

        return new Split(id, new AnyOf([.. cases.Select(c => c.Assume)]), why, [.. cases]);
    }

    private Case? One(Ledger inside, string name, string rule, Relation size, IReadOnlyList<Symbol> wanted)
    {
        Statement assume = Compare.Of(new SymbolUse(sine.Of), size, Expr.Degrees(90));
        // There is none where the digits of the angle cannot be told from those of an exact one.
        if (Calculate.Step(inside, EdgeOf(inside, rule)) is not { } angle) return null;
        if (Excluded(inside) is { } excluded) return new Case(name, assume, [angle, excluded], CaseEnd.NotThisProblem);
        Deduction? room = Room(inside, out bool holds);
        if (room is not null && !holds) return new Case(name, assume, [angle, room], CaseEnd.Impossible);
        if (working.Reach(inside, wanted) is not { Impossible: false, Cases.Count: 0 } rest) return null;
        Held = Held.With((name, inside));
        return new Case(name, assume, [angle, .. room is null ? (Items<Step>)[] : [room], .. rest.Steps], CaseEnd.Holds);
    }

    public Edge EdgeOf(Ledger inside, string rule)
    {
        Instance instance = Instances.Of(book.Find(new RuleId(rule))!, inside.Facts, inside.Arrangement)
            .First(i => i.Quantities(inside.Arrangement).First() == sine.Of);
        return new Edge(instance, sine.Of, Isolate.For(instance.Law!, new SymbolUse(sine.Of))!, [sine], 1);
    }

    /// <summary>The case against a statement of the problem that the angle is acute or obtuse; null when nothing speaks against it.</summary>
    private Deduction? Excluded(Ledger inside)
    {
        foreach (string rule in new[] { "not-acute", "not-obtuse" })
        {
            foreach (Instance instance in Instances.Of(book.Find(new RuleId(rule))!, inside.Facts, inside.Arrangement))
            {
                Compare then = instance.When.OfType<Compare>().Single();
                if (then.Terms[0] is not SymbolUse { Symbol: Angle a } || inside.Arrangement.Canonical(a) != sine.Of) continue;
                if (inside.Holds(then)) return Deduce(inside, instance, then);
            }
        }

        return null;
    }

    /// <summary>Whether the angle fits beside another one that is known; null where no other is.</summary>
    private Deduction? Room(Ledger inside, out bool holds)
    {
        holds = false;
        Schema room = book.Find(new RuleId("room-for-a-third-angle"))!, none = book.Find(new RuleId("no-room-for-a-third-angle"))!;
        if (WithKnown(room, inside).FirstOrDefault() is not { } instance) return null;
        Compare test = instance.When.OfType<Compare>().Single();
        holds = inside.Holds(test);
        if (holds) return Deduce(inside, instance, test);
        Instance refused = WithKnown(none, inside).First();
        return Deduce(inside, refused, refused.When.OfType<Compare>().Single());
    }

    /// <summary>Ways to take the angle just found, second, with another known angle of the triangle, first.</summary>
    private IEnumerable<Instance> WithKnown(Schema schema, Ledger inside) =>
        Instances.Of(schema, [triangle], inside.Arrangement).Where(i =>
            i.When.OfType<Compare>().Single().Terms[0] is Sum { Left: SymbolUse first, Right: SymbolUse second }
            && inside.Arrangement.Canonical(second.Symbol) == sine.Of && inside.Knows(first.Symbol));

    private static Deduction Deduce(Ledger inside, Instance instance, Compare says)
    {
        ClaimId id = inside.NextStep();
        return new Deduction(id, inside.Spelled(says), Reasons.Use(inside, instance, []));
    }

    private RuleUse Use(string rule, Ledger at, IEnumerable<Symbol> inputs)
    {
        Instance instance = Instances.Of(book.Find(new RuleId(rule))!, [triangle], at.Arrangement)
            .First(i => i.Quantities(at.Arrangement).Contains(sine) || at.Arrangement.Canonical(i.Names.Of(i.Schema.Roles[0].Quantity!)) == sine.Of);
        return Reasons.Use(at, instance, inputs);
    }
}
