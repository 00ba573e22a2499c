namespace Explain;

/// <summary>A rule applied to points of the figure.</summary>
/// <param name="Schema">The rule.</param>
/// <param name="Names">What stands for each pattern point.</param>
/// <param name="When">What must hold, in points of the figure.</param>
/// <param name="Law">The law of a relation, every angle under its first name; null for a deduction.</param>
internal sealed record Instance(Schema Schema, Renaming Names, Items<Statement> When, Equation? Law)
{
    public static Instance Of(Schema schema, Renaming names, Arrangement arrangement) => new(
        schema, names, [.. schema.When.Select(names.Of)],
        schema.Law is null ? null : new Equation(arrangement.Canonical(names.Of(schema.Law.Left)), arrangement.Canonical(names.Of(schema.Law.Right))));

    /// <summary>The quantities, in the order of the relation's parameters.</summary>
    public IEnumerable<Symbol> Quantities(Arrangement arrangement) => Schema.Quantities.Select(q => arrangement.Canonical(Names.Of(q)));
}
