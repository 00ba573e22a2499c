namespace Explain;

/// <summary>The givens as enclosures in metres and degrees.</summary>
internal static class GivenNumbers
{
    public static Enclosure? Of(Expr value, int bits) => Evaluator.Evaluate(value) is Evaluated { Value: var found } ? In(found, bits) : null;

    public static Enclosure In(Value value, int bits) => (value.Exact?.Enclose(bits) ?? value.True) * value.Unit.Factor;
}
