namespace Explain;

/// <summary>A rule with its patterns read: what must hold, what follows, over pattern points.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="When">What must hold.</param>
/// <param name="Then">What then holds: for a relation the law as an equality.</param>
/// <param name="Law">The law of a relation in the quantities of the pattern; null for a deduction.</param>
/// <param name="Roles">The roles, quantities of a relation first, in the order declared.</param>
internal sealed record Schema(Rule Rule, Items<Statement> When, Statement Then, Equation? Law, Items<SchemaRole> Roles)
{
    /// <summary>What the conclusion of a rule says that is proved by evaluating its claim, and matches no pattern.</summary>
    public const string ByEvaluation = "by evaluation";

    public bool IsByEvaluation => Rule.Then == ByEvaluation;

    /// <summary>The quantities of a relation, in the order of its parameters.</summary>
    public IEnumerable<Symbol> Quantities => Roles.Where(r => r.Quantity is not null).Take(Rule.Quantities.Count).Select(r => r.Quantity!);

    public static Schema Of(Rule rule)
    {
        Items<SchemaRole> roles = [.. rule.Quantities.Select(q => Role(q, isQuantity: true)), .. rule.Roles.Where(r => !IsQuantityOf(rule, r)).Select(r => Role(r, isQuantity: false))];
        Equation? law = rule.Law is null ? null : LawOf(rule, roles);
        Statement then = law is null ? rule.Then == ByEvaluation ? new All([]) : Read(rule, rule.Then!) : Compare.Equal(law.Left, law.Right);
        return new Schema(rule, [.. rule.When.Select(w => Read(rule, w))], then, law, roles);
    }

    private static bool IsQuantityOf(Rule rule, RolePattern role) => rule.Quantities.Any(q => q.Name == role.Name);

    private static Equation LawOf(Rule rule, Items<SchemaRole> roles)
    {
        Expr Put(Expr side) => side.Substitute(e => e is SymbolUse { Symbol: Letter letter }
            ? new SymbolUse(roles.First(r => r.Name == letter.Name).Quantity!) : null);
        return new Equation(Put(rule.Law!.Left), Put(rule.Law.Right));
    }

    private static SchemaRole Role(RolePattern role, bool isQuantity)
    {
        if (role.IsCondition) return new(role.Name, null, null, StatementGrammar.Read(role.Pattern));
        if (ObjectPattern.Read(role.Pattern) is { } named && !isQuantity) return new(role.Name, null, named, null);
        return new(role.Name, QuantityGrammar.Read(role.Pattern) ?? throw new ArgumentException(role.Pattern, nameof(role)), null, null);
    }

    /// <summary>A statement, "A or B", or how many triangles there are.</summary>
    private static Statement Read(Rule rule, string pattern) => pattern.Split(" or ") is { Length: > 1 } choices
        ? new AnyOf([.. choices.Select(c => Read(rule, c))])
        : CountPattern.Read(pattern) ?? StatementGrammar.Read(pattern) ?? throw new ArgumentException(pattern, rule.Id.Name);
}
