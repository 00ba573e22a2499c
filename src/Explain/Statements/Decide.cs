namespace Explain;

/// <summary>Decides a chain of comparisons.</summary>
internal static class Decide
{
    /// <summary>Whether every link holds; null when one cannot be decided.</summary>
    public static bool? Holds(Compare chain, Func<Expr, Expr, int?> compare)
    {
        for (int i = 0; i < chain.Between.Count; i++)
        {
            if (compare(chain.Terms[i], chain.Terms[i + 1]) is not { } sign) return null;
            if (!Fits(chain.Between[i], sign)) return false;
        }

        return true;
    }

    /// <summary>Whether a relation holds where the first less the second has this sign.</summary>
    public static bool Fits(Relation relation, int sign) => relation switch
    {
        Relation.Equal => sign == 0,
        Relation.Less => sign < 0,
        Relation.LessOrEqual => sign <= 0,
        Relation.Greater => sign > 0,
        Relation.GreaterOrEqual => sign >= 0,
        _ => sign != 0,
    };
}
