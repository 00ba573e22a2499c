namespace Explain;

/// <summary>Puts a unit to a formula: (2x + 16)° is a product, 31.5(√2 + 1) cm one number.</summary>
internal static class WithUnit
{
    /// <summary>Null when the formula is no number and holds no letter.</summary>
    public static Expr? Of(Expr formula, Unit unit) => formula.Symbols().Any() ? new Product(formula, new Quantity(Exact.One, unit))
        : PlainNumber.Of(formula) is { } number ? new Quantity(number, unit) : null;
}
