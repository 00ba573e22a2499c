namespace Explain;

/// <summary>Whether a step is an instance of the schema of its rule: every naming of its points is tried.</summary>
internal sealed class SchemaInstance(Schema schema, Step step, Seen seen, RayNames rays)
{
    private readonly Testimony[] from = [.. seen.Of(step.Why.From)];

    public bool Exists()
    {
        Point[] pattern = [.. schema.When.SelectMany(Mentions.Points).Concat(Mentions.Points(schema.Then)).Concat(schema.Roles.SelectMany(PointsOf)).Distinct()];
        Point[] figure = [.. seen.All.SelectMany(t => Mentions.Points(t.Claim.Says)).Concat(Mentions.Points(step.Says)).Distinct()];
        return SameRoles() && Maps(pattern, figure, []).Any(Fits);
    }

    private static IEnumerable<Dictionary<Point, Point>> Maps(Point[] pattern, Point[] figure, Dictionary<Point, Point> map) => map.Count == pattern.Length ? [map]
        : figure.Where(p => !map.ContainsValue(p)).SelectMany(p => Maps(pattern, figure, new(map) { [pattern[map.Count]] = p }));

    private static IEnumerable<Point> PointsOf(SchemaRole role) => role switch
    {
        { Quantity: { } quantity } => Mentions.Points(quantity),
        { Named: { } named } => Mentions.Points(named),
        _ => Mentions.Points(role.Condition!),
    };

    private bool SameRoles() => step.Why.Roles.Select(r => r.Name).SequenceEqual(schema.Roles.Select(r => r.Name), StringComparer.Ordinal);

    private bool Fits(Dictionary<Point, Point> map)
    {
        Renaming names = new(map);
        return schema.Roles.Zip(step.Why.Roles).All(r => Fills(r.First, r.Second.Is, names))
            && schema.When.All(w => Holds(names.Of(w))) && Compared(names) == step.Why.When && Concludes(names);
    }

    /// <summary>The conditions that compare values which the premises of the step give.</summary>
    private Items<Compare> Compared(Renaming names) =>
    [
        .. schema.When.OfType<Compare>().Select(w => (Compare)names.Of(w)).Where(w => w.Terms.All(t => Closed(t) is not null))
            .Select(w => w with { Terms = [.. w.Terms.Select(t => t.Substitute(e => e is SymbolUse use ? new ValueOf(Giving(use.Symbol)!.Claim.Id) : null))] }),
    ];

    private bool Fills(SchemaRole role, RoleValue value, Renaming names) => (role, value) switch
    {
        ({ Quantity: { } quantity }, Amount amount) => rays.Of(names.Of(quantity)) == rays.Of(amount.Is),
        ({ Named: Polygon named }, Objects { Are: [Polygon only] }) => names.Of(named).Corners.ToHashSet().SetEquals(only.Corners),
        ({ Named: { } named }, Objects { Are: [var only] }) => names.Of(named) == only,
        ({ Condition: { } condition }, Holding holding) => from.Any(t => t.Claim.Id == holding.Claim && States(t, names.Of(condition))),
        _ => false,
    };

    private bool Holds(Statement when) => when switch
    {
        Compare compare => from.Any(t => States(t, when)) || Decide.Holds(compare, (a, b) => Closed(a) is { } left && Closed(b) is { } right ? Agreement.Compare(left, right) : null) == true,
        _ => from.Any(t => States(t, when)),
    };

    private bool States(Testimony testimony, Statement wanted) => testimony.Parts.Any(p => Same(p, wanted)) || IsRight(testimony, wanted);

    /// <summary>An angle whose value is 90° is a right angle.</summary>
    private bool IsRight(Testimony testimony, Statement wanted) => wanted is Place { Kind: PlaceKind.RightAngle, Of: [Corner c] }
        && testimony is { Of: Angle { Reflex: false } angle, Closed: { } closed } && rays.Of(angle) == rays.Of(new Angle(c.First, c.Vertex, c.Second))
        && Agreement.Compare(closed, Expr.Degrees(90)) == 0;

    private bool Same(Statement said, Statement wanted) => (said, wanted) switch
    {
        (Place { Kind: PlaceKind.Triangle or PlaceKind.EquilateralTriangle, Of: [Polygon a] } p, Place { Of: [Polygon b] } q) when p.Kind == q.Kind => a.Corners.ToHashSet().SetEquals(b.Corners),
        (Compare { Between: [Relation.Equal] } a, Compare { Between: [Relation.Equal], Terms: [SymbolUse, SymbolUse] } b) => rays.Of(a) is Compare own && (own == rays.Of(b) || own == rays.Of(Compare.Equal(b.Terms[1], b.Terms[0]))),
        _ => rays.Of(said) == rays.Of(wanted),
    };

    /// <summary>The formula with each quantity as the premises of the step give it; null when one is not among them.</summary>
    private Expr? Closed(Expr expr) => expr.Symbols().All(s => ValueOf(s) is not null)
        ? expr.Substitute(e => e is SymbolUse use ? ValueOf(use.Symbol) : null) : null;

    /// <summary>A side of a law with each quantity as the premises of the step state it; null when one is not among them.</summary>
    private Expr? Put(Expr side) => side.Symbols().All(s => Stated(s) is not null) ? side.Substitute(e => e is SymbolUse use ? Stated(use.Symbol) : null) : null;

    private Expr? Stated(Symbol symbol) => ValueOf(symbol) ?? from.Select(t => t.Claim).OfType<Premise>().Select(p => p.Says).OfType<Compare>()
        .Where(c => c is { Between: [Relation.Equal], Terms: [SymbolUse of, not SymbolUse] } && rays.Of(of.Symbol) == rays.Of(symbol)).Select(c => c.Terms[1]).FirstOrDefault();

    private Expr? ValueOf(Symbol symbol) => Giving(symbol)?.Closed;

    private Testimony? Giving(Symbol symbol) => from.FirstOrDefault(t => t.Of is { } of && rays.Of(of) == rays.Of(symbol));

    private bool Concludes(Renaming names) => step switch
    {
        Calculation c => schema.Law is { } law && Follows(c, new(rays.Of(names.Of(law.Left)), rays.Of(names.Of(law.Right)))),
        Quadratic q => schema.Law is { } law && new QuadraticChecks(rays).Follows(q, new(rays.Of(names.Of(law.Left)), rays.Of(names.Of(law.Right)))),
        Deduction d => schema.Law is { } law ? States(d, new(rays.Of(names.Of(law.Left)), rays.Of(names.Of(law.Right)))) : rays.Of(d.Says) == rays.Of(names.Of(schema.Then)),
        Algebra a => schema.Law is { } law && LetterChecks.Value(a) is not null && Put(rays.Of(names.Of(law.Left))) is { } left && Put(rays.Of(names.Of(law.Right))) is { } right && a.Start == Compare.Equal(left, right),
        Instruction i => schema.Law is null && Makes(i, names.Of(schema.Then)),
        Split s => schema.Law is null && rays.Of(s.Says) == rays.Of(names.Of(schema.Then)) && Divides(s),
        _ => false,
    };

    /// <summary>Whether a relation is stated for one of its quantities.</summary>
    private bool States(Deduction d, Equation law) => d.Says is Compare { Between: [Relation.Equal], Terms: [SymbolUse { Symbol: var of }, var formula] }
        && LawInstance.Gives(law, rays.Of(of), rays.Of(formula));

    private bool Follows(Calculation c, Equation law)
    {
        Symbol target = rays.Of(c.Target);
        Expr formula = rays.Of(c.Formula);
        return LawInstance.Gives(law, target, formula) && c.Law.All(l => l.Between is [Relation.Equal]
            && LawInstance.Put(new(rays.Of(l.Terms[0]), rays.Of(l.Terms[1])), target, formula) is { } printed && LawInstance.Agree(printed));
    }

    /// <summary>What an instruction guarantees: its conclusion, and for a foot the right angles at it.</summary>
    private static bool Makes(Instruction i, Statement then)
    {
        if (then is not Place { Kind: PlaceKind.Foot, Of: [Point foot, Point top, Line line] }) return i.Says == then;
        return i.Makes is [Point made] && made == foot && Meaning.Of(i.Says).Contains(then) && Meaning.Of(i.Says).All(s => s == then
            || s is Place { Kind: PlaceKind.RightAngle, Of: [Corner c] } && (c == new Corner(top, foot, line.From) || c == new Corner(top, foot, line.To)));
    }

    /// <summary>Two angles with one sine are all, unless the sine is 1.</summary>
    private bool Divides(Split s) => s.Says is AnyOf { Of: [Compare { Terms: [SymbolUse { Symbol: Angle angle }, ..] }, ..] } any
        && any.Of == (Items<Statement>)[.. s.Cases.Select(c => c.Assume)]
        && ValueOf(new Ratio(Function.Sine, angle)) is { } sine && Agreement.Compare(sine, 1) < 0;
}
