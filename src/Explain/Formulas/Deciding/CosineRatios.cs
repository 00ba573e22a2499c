namespace Explain;

/// <summary>The operations on quotients of cosine sums; null when a sum becomes too long.</summary>
internal sealed class CosineRatios(CosineTable table)
{
    public CosineRatio? Plus(CosineRatio? first, CosineRatio? second)
    {
        if (first is null || second is null) return null;
        CosineRatio common = CosineRatio.Of(table.Zero);
        foreach (CosineSum divisor in first.Bottom.Keys.Union(second.Bottom.Keys))
            common = common.Over(divisor, int.Max(Exponent(first, divisor), Exponent(second, divisor)));
        return Raised(first, common) is { } left && Raised(second, common) is { } right ? common with { Top = left + right } : null;
    }

    public CosineRatio? Times(CosineRatio? first, CosineRatio? second)
    {
        if (first is null || second is null || table.Times(first.Top, second.Top) is not { } top) return null;
        return second.Bottom.Aggregate(first with { Top = top }, (all, d) => all.Over(d.Key, d.Value));
    }

    public CosineRatio? Inverse(CosineRatio? value)
    {
        if (value is null) return null;
        CosineSum? top = value.Bottom.Aggregate((CosineSum?)table.One, (all, d) => Times(all, d.Key, d.Value));
        return top is null ? null : CosineRatio.Of(top).Over(value.Top, 1);
    }

    /// <summary>√(a ÷ b²) = √a ÷ |b|; a divisor that stands an odd number of times is put under the root once more.</summary>
    public CosineRatio? Root(CosineRatio? under)
    {
        if (under is null) return null;
        CosineSum? square = under.Top;
        CosineRatio outside = CosineRatio.Of(table.One);
        foreach ((CosineSum divisor, int exponent) in under.Bottom)
        {
            int half = (exponent + 1) / 2;
            square = Times(square, divisor, exponent % 2);
            if (SignOf(divisor) is not { } sign) return null;
            outside = (half % 2 == 1 && sign < 0 ? outside.Negated : outside).Over(divisor, half);
        }

        return square is not null && table.Root(square) is { } root ? Times(outside, CosineRatio.Of(root)) : null;
    }

    private CosineSum? Raised(CosineRatio value, CosineRatio common) =>
        common.Bottom.Aggregate((CosineSum?)value.Top, (all, d) => Times(all, d.Key, d.Value - Exponent(value, d.Key)));

    private CosineSum? Times(CosineSum? sum, CosineSum factor, int exponent)
    {
        for (int i = 0; i < exponent && sum is not null; i++) sum = table.Times(sum, factor);
        return sum;
    }

    private int? SignOf(CosineSum sum) => Enclosure.Ladder.Select(bits => table.Enclose(sum, bits).Sign).FirstOrDefault(s => s is not null);

    private static int Exponent(CosineRatio ratio, CosineSum divisor) => ratio.Bottom.GetValueOrDefault(divisor);
}
