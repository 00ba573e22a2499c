namespace Explain;

/// <summary>Sums as lists of terms with signs, in the order in which they are written.</summary>
internal static class Addends
{
    public static IEnumerable<Addend> Of(Expr expr, bool isNegative = false) => expr switch
    {
        Sum(var a, var b) => Of(a, isNegative).Concat(Of(b, isNegative)),
        Difference(var a, var b) => Of(a, isNegative).Concat(Of(b, !isNegative)),
        Negative(var a) => Of(a, !isNegative),
        Quantity { Amount.Sign: 0 } => [],
        _ => [new(expr, isNegative)],
    };

    /// <summary>Writes the sum. A term without minus comes first, if there is one; numbers of one unit beside each other are added.</summary>
    public static Expr Write(IEnumerable<Addend> terms)
    {
        List<Addend> list = [.. terms];
        int first = int.Max(0, list.FindIndex(t => !t.IsNegative));
        if (list.Count == 0) return 0;
        Expr all = list[first].IsNegative ? new Negative(list[first].Of) : list[first].Of;
        list.RemoveAt(first);
        return list.Aggregate(all, Plus);
    }

    public static Expr Plus(Expr sum, Expr other) => Write(Of(sum).Concat(Of(other)));

    public static Expr Minus(Expr sum, Expr other) => Write(Of(sum).Concat(Of(other, isNegative: true)));

    private static Expr Plus(Expr sum, Addend term) => (sum, term.Of) switch
    {
        (Quantity(var a, var unit), Quantity(var b, var other)) when unit == other
            && Exact.Add(a, term.IsNegative ? b.Negate() : b) is { } total => new Quantity(total, unit),
        _ => term.IsNegative ? new Difference(sum, term.Of) : new Sum(sum, term.Of),
    };
}
