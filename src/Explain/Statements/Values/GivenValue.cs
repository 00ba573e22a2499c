namespace Explain;

/// <summary>A value as read.</summary>
/// <param name="Is">A number with its unit, or an expression in letters.</param>
/// <param name="Within">By how much it may be wrong either way; null when nothing is said.</param>
/// <param name="Typed">The value as typed, without the ±.</param>
internal sealed record GivenValue(Expr Is, Expr? Within, string Typed)
{
    /// <summary>The unit; none for a plain number or an expression without one.</summary>
    public Unit Unit => UnitIn(Is);

    /// <summary>The number, where it is one.</summary>
    public Exact? Number => (Is as Quantity)?.Amount;

    public static Unit UnitIn(Expr value) => value switch
    {
        Quantity q => q.Unit,
        Product { Right: Quantity q } => q.Unit,
        _ => Unit.None,
    };
}
