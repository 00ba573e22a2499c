namespace Explain;

/// <summary>A value as a number that a message can show: exact, or cut to three places.</summary>
internal static class Digits
{
    private const int Places = 1000;

    public static Quantity Of(Value value) => new(value.Exact ?? Exact.Of(Whole(value.True.Low * Places) / Places), value.Unit);

    private static Fractions.Fraction Whole(Fractions.Fraction value) => new(Explain.Whole.FloorDivide(value.Numerator, value.Denominator));
}
