namespace Explain;

/// <summary>A formula in what is known, or nothing where a part of it is not.</summary>
internal readonly record struct Maybe(Expr? Is)
{
    public Maybe Sine => Of(Function.Sine);

    public Maybe Cosine => Of(Function.Cosine);

    public static implicit operator Maybe(Expr of) => new(of);

    public static implicit operator Maybe(int number) => new(number);

    public static Maybe operator +(Maybe left, Maybe right) => Join(left, right, (a, b) => a + b);

    public static Maybe operator -(Maybe left, Maybe right) => Join(left, right, (a, b) => a - b);

    public static Maybe operator *(Maybe left, Maybe right) => Join(left, right, (a, b) => a * b);

    public static Maybe operator /(Maybe left, Maybe right) => Join(left, right, (a, b) => a / b);

    private static Maybe Join(Maybe left, Maybe right, Func<Expr, Expr, Expr> join) => left.Is is { } a && right.Is is { } b ? new(join(a, b)) : default;

    private Maybe Of(Function function) => Is is { } angle ? new(new Apply(function, angle)) : default;
}
