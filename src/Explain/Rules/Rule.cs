namespace Explain;

/// <summary>A rule of the rule book: data that the generator writes from a declaration.</summary>
/// <param name="Id">Its name.</param>
/// <param name="When">Patterns of what must hold, in the grammar of problem files over pattern points.</param>
/// <param name="Then">The pattern of what then holds; null for a relation.</param>
/// <param name="Law">For a relation, its two sides over the letters named in <paramref name="Quantities"/>; null for a deduction.</param>
/// <param name="Quantities">For a relation, each letter of the law and the quantity it stands for.</param>
/// <param name="Roles">Every role that a wording may place, quantities and named conditions included.</param>
/// <param name="Source">Where the rule comes from.</param>
/// <param name="Marks">How many marks a scheme gives it by default.</param>
public sealed record Rule(RuleId Id, Items<string> When, string? Then, Equation? Law, Items<RolePattern> Quantities,
    Items<RolePattern> Roles, string Source, int Marks);
