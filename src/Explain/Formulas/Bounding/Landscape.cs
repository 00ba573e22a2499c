namespace Explain;

/// <summary>A formula without units, with its first and second derivatives, each made when it is asked for.</summary>
internal sealed class Landscape(Expr formula, Interner interner)
{
    private readonly Dictionary<Symbol, Differentiation> by = [];

    public Expr Formula => formula;

    /// <summary>The formula with all signs turned: its least values are the greatest of this one.</summary>
    public Landscape Upside => new(interner.Keep(new Negative(formula)), interner);

    public Expr First(Symbol symbol) => By(symbol).Of(formula);

    public Expr Second(Symbol first, Symbol second) => By(second).Of(First(first));

    private Differentiation By(Symbol symbol) => by.TryGetValue(symbol, out Differentiation? known) ? known : by[symbol] = new(symbol, interner);
}
