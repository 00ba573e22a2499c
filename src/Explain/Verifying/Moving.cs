namespace Explain;

/// <summary>How a formula holds a measurement.</summary>
internal static class Moving
{
    /// <summary>Whether doubling the measurement doubles the formula for its place in the tree alone: a factor, or above the line.</summary>
    public static bool IsMultiple(Expr formula, Symbol measured) => Times(formula, measured) == 1;

    /// <summary>The power to which the measurement stands as a factor; null where it stands otherwise.</summary>
    private static int? Times(Expr formula, Symbol measured) => formula switch
    {
        SymbolUse use => use.Symbol == measured ? 1 : 0,
        Product(var a, var b) => Times(a, measured) + Times(b, measured),
        Quotient(var a, var b) => Times(a, measured) - Times(b, measured),
        _ => formula.Symbols().Contains(measured) ? null : 0,
    };
}
