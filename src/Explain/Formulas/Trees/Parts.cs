namespace Explain;

/// <summary>The parts that a formula is made of, and the same formula of other parts.</summary>
internal static class Parts
{
    public static Items<Expr> Of(Expr expr) => expr switch
    {
        Sum(var left, var right) => [left, right],
        Difference(var left, var right) => [left, right],
        Product(var left, var right) => [left, right],
        Quotient(var left, var right) => [left, right],
        Power(var of, _) => [of],
        Root(var of) => [of],
        Negative(var of) => [of],
        Apply(_, var to) => [to],
        _ => [],
    };

    public static Expr With(Expr expr, Items<Expr> parts) => expr switch
    {
        Sum => new Sum(parts[0], parts[1]),
        Difference => new Difference(parts[0], parts[1]),
        Product => new Product(parts[0], parts[1]),
        Quotient => new Quotient(parts[0], parts[1]),
        Power(_, var exponent) => new Power(parts[0], exponent),
        Root => new Root(parts[0]),
        Negative => new Negative(parts[0]),
        Apply(var function, _) => new Apply(function, parts[0]),
        _ => expr,
    };

    public static bool Same(Items<Expr> first, Items<Expr> second)
    {
        for (int i = 0; i < first.Count; i++)
            if (!ReferenceEquals(first[i], second[i])) return false;
        return true;
    }
}
