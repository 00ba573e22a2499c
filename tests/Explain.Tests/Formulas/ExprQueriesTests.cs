using static Explain.Tests.Formulas.Make;

namespace Explain.Tests.Formulas;

public sealed class ExprQueriesTests
{
    private static readonly Expr X = Letter("x");

    [Fact]
    public void Symbols_and_claims_come_once_and_in_order()
    {
        Expr expr = Letter("b") * new ValueOf(new("g2")) + X * new ValueOf(new("g1")) - Letter("b") / new ValueOf(new("g2"));
        Assert.Equal([new Letter("b"), new Letter("x")], expr.Symbols());
        Assert.Equal([new ClaimId("g2"), new ClaimId("g1")], expr.Claims());
    }

    [Fact]
    public void Occurrences_are_counted()
    {
        Expr expr = Sin(X) / 2 + X * Sin(X);
        Assert.Equal((3, 2, 0), (expr.Count(X), expr.Count(Sin(X)), expr.Count(Cos(X))));
        Assert.True(expr.Holds(Sin(X)) && !expr.Holds(Letter("y")));
    }

    [Fact]
    public void Substitution_shares_what_it_leaves()
    {
        Expr kept = Sin(Letter("y")) + 1, expr = kept * X;
        Product replaced = Assert.IsType<Product>(expr.Replace(Symbol(X), 7));
        Assert.Same(kept, replaced.Left);
        Assert.Equal((Expr)7, replaced.Right);
        Assert.Same(expr, expr.Replace(Symbol(Letter("z")), 7));
    }

    [Fact]
    public void Substitution_goes_from_the_top_and_does_not_search_what_it_put_in() => Assert.Equal(
        Sin(X) + 1,
        (Root(X) + 1).Substitute(node => node is Root(var under) ? Sin(under) : node.Equals(X) ? Letter("never") : null));

    [Fact]
    public void Formulas_put_into_each_other_forty_times_are_still_small_work()
    {
        Expr expr = M("1");
        for (int i = 0; i < 40; i++) expr = (expr + expr) / 2;
        Assert.Empty(expr.Symbols());
        Assert.Equal(1 + 3 * 40, expr.Subtrees().Count());
        Assert.Equal(Exact.One, Assert.IsType<Evaluated>(Evaluator.Evaluate(expr)).Value.Exact);
    }
}
