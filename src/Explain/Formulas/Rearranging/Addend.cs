namespace Explain;

/// <summary>A term of a sum, with its sign.</summary>
internal readonly record struct Addend(Expr Of, bool IsNegative)
{
    public static Addend operator -(Addend value) => value with { IsNegative = !value.IsNegative };
}
