namespace Explain;

/// <summary>Makes deductions and the one instruction that the triangle topics need.</summary>
internal sealed class Deduce(RuleBook book, Ledger ledger)
{
    /// <summary>The deduction by a rule whose pattern points stand for these; null when a condition does not hold.</summary>
    public Deduction? By(string rule, params (string Pattern, Point Is)[] names)
    {
        Schema schema = book.Find(new RuleId(rule))!;
        return By(Instance.Of(schema, new Renaming(names.ToDictionary(n => new Point(n.Pattern), n => n.Is)), ledger.Arrangement));
    }

    /// <summary>The deduction by a rule applied to points of the figure; null when a condition does not hold.</summary>
    public Deduction? By(Instance instance)
    {
        bool holds = instance.When.All(w => w is Place place ? ledger.ClaimOf(place) is not null : w is Compare c && ledger.Holds(c));
        if (!holds) return null;
        ClaimId id = ledger.NextStep();
        Statement says = Spelled(instance.Names.Of(instance.Schema.Then));
        Deduction made = new(id, says, Reasons.Use(ledger, instance, []));
        ledger.Learn(says, id);
        return made;
    }

    /// <summary>That values compare so; null where they do not.</summary>
    public Deduction? Compared(Items<Expr> terms, Items<Relation> between)
    {
        Compare says = new([.. terms.Select(ledger.Arrangement.Canonical)], between);
        if (!ledger.Holds(says)) return null;
        return new(ledger.NextStep(), says, new(new("comparison-of-values"), [], [.. says.Terms.SelectMany(t => t.Symbols()).Select(ledger.ClaimOf).Distinct()]));
    }

    private Statement Spelled(Statement says) => says is Compare compare ? compare with { Terms = [.. compare.Terms.Select(ledger.Arrangement.Canonical)] } : says;

    /// <summary>A relation stated for one of its quantities, whose value is not asked for.</summary>
    public Deduction Law(string rule, Symbol of, params (string Pattern, Point Is)[] names)
    {
        Schema schema = book.Find(new RuleId(rule))!;
        Instance instance = Instance.Of(schema, new Renaming(names.ToDictionary(n => new Point(n.Pattern), n => n.Is)), ledger.Arrangement);
        Symbol target = ledger.Arrangement.Canonical(of);
        Deduction made = new(ledger.NextStep(), Compare.Equal(target, Isolate.For(instance.Law!, target)!.Formula), Reasons.Use(ledger, instance, []));
        ledger.Learn(made.Says, made.Id);
        return made;
    }

    /// <summary>Lets a new point be the foot of a perpendicular, with the right angles that this makes.</summary>
    public Instruction Foot(Point from, Line line, Phrase? title)
    {
        Point foot = FreePoint();
        Schema schema = book.Find(new RuleId("foot-of-a-perpendicular"))!;
        Instance instance = Instance.Of(schema, new Renaming(new Dictionary<Point, Point>
        {
            [new("P")] = line.From, [new("Q")] = line.To, [new("T")] = from, [new("F")] = foot,
        }), ledger.Arrangement);
        ClaimId id = ledger.NextStep();
        All says = new([instance.Names.Of(schema.Then), .. new[] { line.From, line.To }.Select(end => new Place(PlaceKind.RightAngle, [new Corner(from, foot, end)]))]);
        RuleUse why = Reasons.Use(ledger, instance, []);
        ledger.Learn(says, id);
        return new Instruction(id, says, why, TopicPhrases.LetFoot(foot, from, line), [foot]) { Title = title };
    }

    private Point FreePoint() => new[] { "F", "M", "N", "H", "K", "L", "V", "W" }.Select(n => new Point(n)).First(p => !ledger.Arrangement.Points.Contains(p));
}
