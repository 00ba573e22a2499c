namespace Explain;

/// <summary>A number as the quotient of two cosine sums; the divisor is not 0.</summary>
internal readonly record struct CosineRatio(CosineSum Top, CosineSum Bottom);
