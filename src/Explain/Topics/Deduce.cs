namespace Explain;

/// <summary>Makes deductions and the one instruction that the triangle topics need.</summary>
internal sealed class Deduce(RuleBook book, Ledger ledger)
{
    /// <summary>The deduction by a rule whose pattern points stand for these; null when a condition does not hold.</summary>
    public Deduction? By(string rule, params (string Pattern, Point Is)[] names) => By(Applied(rule, names));

    /// <summary>The deduction by a rule applied to points of the figure; null when a condition does not hold.</summary>
    public Deduction? By(Instance instance)
    {
        bool holds = instance.When.All(w => w is Place place ? ledger.ClaimOf(place) is not null : w is Compare c && ledger.Holds(c));
        if (!holds) return null;
        ClaimId id = ledger.NextStep();
        Statement then = instance.Names.Of(instance.Schema.Then), says = then is Compare compare ? ledger.Spelled(compare) : then;
        Deduction made = new(id, says, Reasons.Use(ledger, instance, []));
        ledger.Learn(says, id);
        return made;
    }

    /// <summary>That values compare so; null where they do not.</summary>
    public Deduction? Compared(Items<Expr> terms, Items<Relation> between)
    {
        Compare says = ledger.Spelled(new Compare(terms, between));
        if (!ledger.Holds(says)) return null;
        return new(ledger.NextStep(), says, new(new("comparison-of-values"), [], [.. says.Terms.SelectMany(t => t.Symbols()).Select(ledger.ClaimOf).Distinct()]));
    }

    /// <summary>A relation stated for one of its quantities, whose value is not asked for.</summary>
    public Deduction Law(string rule, Symbol of, params (string Pattern, Point Is)[] names)
    {
        Instance instance = Applied(rule, names);
        Symbol target = ledger.Arrangement.Canonical(of);
        Deduction made = new(ledger.NextStep(), Compare.Equal(target, Isolate.For(instance.Law!, target)!.Formula), Reasons.Use(ledger, instance, []));
        ledger.Learn(made.Says, made.Id);
        return made;
    }

    /// <summary>Lets a new point be the foot of a perpendicular, with the right angles that this makes.</summary>
    public Instruction Foot(Point from, Line line, Phrase? title)
    {
        Point foot = FreePoint();
        Instance instance = Applied("foot-of-a-perpendicular", ("P", line.From), ("Q", line.To), ("T", from), ("F", foot));
        ClaimId id = ledger.NextStep();
        All says = new([instance.Names.Of(instance.Schema.Then), .. new[] { line.From, line.To }.Select(end => new Place(PlaceKind.RightAngle, [new Corner(from, foot, end)]))]);
        RuleUse why = Reasons.Use(ledger, instance, []);
        ledger.Learn(says, id);
        return new Instruction(id, says, why, TopicPhrases.LetFoot(foot, from, line), [foot]) { Title = title };
    }

    private Instance Applied(string rule, params (string Pattern, Point Is)[] names) =>
        Instance.Of(book.Find(new RuleId(rule))!, new Renaming(names.ToDictionary(n => new Point(n.Pattern), n => n.Is)), ledger.Arrangement);

    private Point FreePoint() => new[] { "F", "M", "N", "H", "K", "L", "V", "W" }.Select(n => new Point(n)).First(p => !ledger.Arrangement.Points.Contains(p));
}
