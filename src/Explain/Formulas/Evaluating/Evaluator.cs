namespace Explain;

/// <summary>Evaluates closed formulas, in which only quantities are left, from these quantities and never from printed digits.</summary>
internal static class Evaluator
{
    /// <exception cref="ArgumentException">Units do not go together, or symbols are left: faults of the caller.</exception>
    public static Evaluation Evaluate(Expr expr)
    {
        Reckoner reckoner = new();
        Plain plain = reckoner.Plain(expr);
        return reckoner.Examine(plain.Number) ?? reckoner.Value(plain.Number, plain.Scale.Unit);
    }

    /// <summary>1, 0 or −1; null when that is not decided or there is no value.</summary>
    public static int? Sign(Expr expr)
    {
        Reckoner reckoner = new();
        return Sign(reckoner.Plain(expr).Number, reckoner);
    }

    /// <summary>The same for a formula whose units were taken out, so that angles are numbers of degrees.</summary>
    public static int? SignOfNumber(Expr number)
    {
        Reckoner reckoner = new();
        return Sign(reckoner.KeepAll(number), reckoner);
    }

    /// <summary>1 when the first is greater, 0 when both are equal, −1 when the second is greater; null when that is not decided.</summary>
    public static int? Compare(Expr first, Expr second) => Sign(new Difference(first, second));

    private static int? Sign(Expr number, Reckoner reckoner) => reckoner.Examine(number) is null ? reckoner.Sign(number) : null;
}
