namespace Explain;

/// <summary>Fills the roles of a rule and lists the claims that a use of it rests on.</summary>
internal static class Reasons
{
    /// <summary>The use of a rule here, resting on what meets its conditions and on the claims of its inputs.</summary>
    public static RuleUse Use(Ledger ledger, Instance instance, IEnumerable<Symbol> inputs)
    {
        Items<ClaimId> from = From(ledger, instance, inputs);
        return new(instance.Schema.Rule.Id, Roles(ledger, instance), from) { When = When(ledger, instance, from) };
    }

    private static Items<Role> Roles(Ledger ledger, Instance instance) =>
        [.. instance.Schema.Roles.Select(role => new Role(role.Name, Filled(ledger, instance, role), role.Condition is not null))];

    /// <summary>The claims that meet the conditions, then those that give the quantities, then those that put points on the arms of an angle that has another name, each once.</summary>
    private static Items<ClaimId> From(Ledger ledger, Instance instance, IEnumerable<Symbol> inputs)
    {
        ClaimId[] conditions = [.. instance.When.Select(w => w is Place place ? ledger.ClaimOf(place) : w is Compare compare ? ledger.ClaimOf(compare) : null).OfType<ClaimId>()];
        Symbol[] given = [.. instance.When.OfType<Compare>().Where(c => ledger.ClaimOf(c) is null).SelectMany(c => c.Terms).SelectMany(t => t.Symbols()).Concat(inputs)];
        IEnumerable<ClaimId> renamed = instance.Schema.Quantities.Select(instance.Names.Of)
            .Concat(given.Select(ledger.ClaimOf).Select(ledger.Stated).OfType<Symbol>()).Concat(instance.When.OfType<Place>().SelectMany(p => Named(ledger, p))).SelectMany(ledger.WhyRenamed);
        return [.. conditions.Concat(given.Select(ledger.ClaimOf)).Concat(renamed).Distinct()];
    }

    /// <summary>Both names of a right angle that a claim gives under another one.</summary>
    private static IEnumerable<Symbol> Named(Ledger ledger, Place condition) => condition is { Kind: PlaceKind.RightAngle, Of: [Corner c] } && ledger.ClaimOf(condition) is { } claim
        && ledger.Stated(claim) is Angle stated && new Angle(c.First, c.Vertex, c.Second) is var own && own != stated ? [stated, own] : [];

    /// <summary>The conditions that compare values, with the claims that give these.</summary>
    private static Items<Compare> When(Ledger ledger, Instance instance, Items<ClaimId> from) =>
    [
        .. instance.When.OfType<Compare>().Where(c => c.Terms.SelectMany(t => t.Symbols()).All(s => ledger.Knows(s) && from.Contains(ledger.ClaimOf(s))))
            .Select(c => c with { Terms = [.. c.Terms.Select(ledger.WithValues)] }),
    ];

    private static RoleValue Filled(Ledger ledger, Instance instance, SchemaRole role) => role switch
    {
        { Quantity: { } quantity } => new Amount(ledger.Arrangement.Canonical(instance.Names.Of(quantity))),
        { Named: Line line } => new Objects([Spelled(ledger.Arrangement, instance.Names.Of(line))]),
        { Named: Polygon polygon } => new Objects([ledger.TriangleOf(instance.Names.Of(polygon).Corners) ?? instance.Names.Of(polygon)]),
        { Named: { } named } => new Objects([instance.Names.Of(named)]),
        { Condition: Place condition } => new Holding(ledger.ClaimOf((Place)instance.Names.Of(condition))!.Value),
        _ => throw new ArgumentException(role.Name, nameof(role)),
    };

    /// <summary>The line by the name that the problem gives to its length.</summary>
    private static Line Spelled(Arrangement arrangement, Line line) =>
        arrangement.Canonical(new Length(line.From, line.To)) is Length length ? new(length.From, length.To) : line;
}
