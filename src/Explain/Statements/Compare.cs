namespace Explain;

/// <summary>A chain of equalities or inequalities: a = b = (2x + 16)°; 3 + 6 &lt; 9.5.</summary>
/// <param name="Terms">Two terms or more.</param>
/// <param name="Between">The relation between each term and the next: one fewer than the terms.</param>
public sealed record Compare(Items<Expr> Terms, Items<Relation> Between) : Statement
{
    /// <summary>Two terms that are equal.</summary>
    public static Compare Equal(Expr left, Expr right) => new([left, right], [Relation.Equal]);

    /// <summary>One term and another, related as given.</summary>
    public static Compare Of(Expr left, Relation relation, Expr right) => new([left, right], [relation]);
}
