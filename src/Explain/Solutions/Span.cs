namespace Explain;

/// <summary>The values that a case supposes for one quantity: those between two limits.</summary>
/// <param name="Low">The lower limit; null where there is none.</param>
/// <param name="HasLow">Whether the lower limit itself is among them.</param>
/// <param name="High">The upper limit; null where there is none.</param>
/// <param name="HasHigh">Whether the upper limit itself is among them.</param>
internal sealed record Span(Expr? Low, bool HasLow, Expr? High, bool HasHigh)
{
    private static readonly Span All = new(null, false, null, false);

    /// <summary>Whether it is one value.</summary>
    public bool IsPoint => Low is not null && Low == High;

    /// <summary>What a statement supposes of a quantity; null when it compares something else.</summary>
    public static Span? Of(Statement supposed, Symbol of)
    {
        Span? span = All;
        foreach (Statement part in Parts(supposed))
            span = span is not null && part is Compare { Terms: [var left, var right], Between: [var relation] } ? span.Within(left, relation, right, of) : null;
        return span;
    }

    /// <summary>The quantity of which each of some statements supposes limits; null when there is none.</summary>
    public static Symbol? Parameter(Items<Statement> supposed) => supposed.SelectMany(Parts).OfType<Compare>().SelectMany(c => c.Terms)
        .OfType<SymbolUse>().Select(u => u.Symbol).Distinct().FirstOrDefault(s => supposed.All(o => Of(o, s) is not null));

    private static IEnumerable<Statement> Parts(Statement supposed) => supposed switch
    {
        All all => all.Of.SelectMany(Parts),
        Compare { Terms.Count: > 2 } chain => chain.Between.Select((b, i) => Compare.Of(chain.Terms[i], b, chain.Terms[i + 1])),
        _ => [supposed],
    };

    private Span? Within(Expr left, Relation relation, Expr right, Symbol of) =>
        left == of ? Within(relation, right) : right == of ? Within(Turned(relation), left) : null;

    private Span? Within(Relation relation, Expr limit) => relation switch
    {
        Relation.Less => this with { High = limit, HasHigh = false },
        Relation.LessOrEqual => this with { High = limit, HasHigh = true },
        Relation.Greater => this with { Low = limit, HasLow = false },
        Relation.GreaterOrEqual => this with { Low = limit, HasLow = true },
        Relation.Equal => new(limit, true, limit, true),
        _ => null,
    };

    private static Relation Turned(Relation relation) => relation switch
    {
        Relation.Less => Relation.Greater,
        Relation.LessOrEqual => Relation.GreaterOrEqual,
        Relation.Greater => Relation.Less,
        Relation.GreaterOrEqual => Relation.LessOrEqual,
        _ => relation,
    };
}
