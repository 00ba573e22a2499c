using System.Collections.Immutable;
using Fractions;

namespace Explain;

/// <summary>A number as a cosine sum divided by powers of cosine sums that are not 0. Divisors are kept apart, the same object once, so that they can be shared and put out of roots.</summary>
internal sealed record CosineRatio(CosineSum Top, ImmutableDictionary<CosineSum, int> Bottom)
{
    private static readonly ImmutableDictionary<CosineSum, int> None = ImmutableDictionary.Create<CosineSum, int>(ReferenceEqualityComparer.Instance);

    public static CosineRatio Of(CosineSum top) => new(top, None);

    public CosineRatio Negated => this with { Top = -Top };

    /// <summary>Divided by a power of a sum that is not 0.</summary>
    public CosineRatio Over(CosineSum divisor, int exponent) => divisor.Rational is { } number
        ? this with { Top = Top * Fraction.Pow(number, -exponent) }
        : this with { Bottom = Bottom.SetItem(divisor, Bottom.GetValueOrDefault(divisor) + exponent) };
}
