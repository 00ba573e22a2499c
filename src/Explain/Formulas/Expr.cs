namespace Explain;

/// <summary>
/// A formula as a tree. Trees are never re-associated: what stands first is calculated first.
/// Equal when the trees are equal.
/// </summary>
public abstract record Expr
{
    /// <summary>A sum.</summary>
    public static Expr operator +(Expr left, Expr right) => new Sum(left, right);

    /// <summary>A difference.</summary>
    public static Expr operator -(Expr left, Expr right) => new Difference(left, right);

    /// <summary>A product.</summary>
    public static Expr operator *(Expr left, Expr right) => new Product(left, right);

    /// <summary>A quotient.</summary>
    public static Expr operator /(Expr left, Expr right) => new Quotient(left, right);

    /// <summary>The negative.</summary>
    public static Expr operator -(Expr of) => new Negative(of);

    /// <summary>A symbol as a formula.</summary>
    public static implicit operator Expr(Symbol symbol) => new SymbolUse(symbol);

    /// <summary>A whole number as a formula.</summary>
    public static implicit operator Expr(int number) => new Quantity(Exact.Of(number), Unit.None);

    /// <summary>A number of degrees.</summary>
    public static Expr Degrees(int number) => new Quantity(Exact.Of(number), Unit.Degree);
}
