using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>
/// A sum of rational multiples of cosine terms, as whole multiples over one denominator; like terms are put together, none is 0.
/// Angles are brought to 0° and more, less than 90°. Two sums may be equal numbers and have different terms.
/// </summary>
internal sealed class CosineSum
{
    private readonly Dictionary<CosineTerm, BigInteger> terms;

    private CosineSum(Dictionary<CosineTerm, BigInteger> terms, BigInteger denominator, int steps) =>
        (this.terms, Denominator, Steps) = (terms, denominator, steps);

    public IReadOnlyDictionary<CosineTerm, BigInteger> Terms => terms;

    public BigInteger Denominator { get; }

    /// <summary>How many steps make a degree.</summary>
    public int Steps { get; }

    public bool IsEmpty => terms.Count == 0;

    /// <summary>The number as a fraction where only a plain number is left.</summary>
    public Fraction? Rational => IsEmpty ? Fraction.Zero
        : terms.Count == 1 && terms.TryGetValue(CosineTerm.One, out BigInteger only) ? new Fraction(only, Denominator) : null;

    /// <summary>The roots that occur, as bits.</summary>
    public int Roots => terms.Keys.Aggregate(0, (all, t) => all | t.Roots);

    /// <summary>Adds up terms whose angles may be any.</summary>
    public static CosineSum Of(IEnumerable<(CosineTerm Term, BigInteger Times)> parts, BigInteger denominator, int steps)
    {
        Dictionary<CosineTerm, BigInteger> terms = [];
        foreach ((CosineTerm term, BigInteger times) in parts)
        {
            (int angle, int halves) = Acute(term.Angle, steps);
            CosineTerm key = term with { Angle = angle };
            terms[key] = terms.GetValueOrDefault(key) + times * halves;
        }

        return Shortened(terms.Where(t => !t.Value.IsZero).ToDictionary(), 2 * denominator, steps);
    }

    public static CosineSum operator +(CosineSum first, CosineSum second) => Of(
        first.Parts.Select(p => (p.Term, p.Times * second.Denominator)).Concat(second.Parts.Select(p => (p.Term, p.Times * first.Denominator))),
        first.Denominator * second.Denominator,
        first.Steps);

    public static CosineSum operator -(CosineSum value) => value * Fraction.MinusOne;

    public static CosineSum operator *(CosineSum value, Fraction factor) =>
        Of(value.Parts.Select(p => (p.Term, p.Times * factor.Numerator)), value.Denominator * factor.Denominator, value.Steps);

    /// <summary>The terms with and without a root, that root taken out of the first.</summary>
    public (CosineSum With, CosineSum Without) Split(int root) => (
        Of(Parts.Where(p => (p.Term.Roots & root) != 0).Select(p => (p.Term with { Roots = p.Term.Roots & ~root }, p.Times)), Denominator, Steps),
        Of(Parts.Where(p => (p.Term.Roots & root) == 0), Denominator, Steps));

    public IEnumerable<(CosineTerm Term, BigInteger Times)> Parts => terms.Select(t => (t.Key, t.Value));

    private static CosineSum Shortened(Dictionary<CosineTerm, BigInteger> terms, BigInteger denominator, int steps)
    {
        BigInteger common = denominator;
        foreach (BigInteger times in terms.Values)
        {
            if (common.IsOne) break;
            common = BigInteger.GreatestCommonDivisor(common, times);
        }

        return new(common.IsOne ? terms : terms.ToDictionary(t => t.Key, t => t.Value / common), denominator / common, steps);
    }

    // In halves, because of cos 60° = ½, the one rational cosine between 0° and 90° (Niven).
    private static (int Angle, int Halves) Acute(int angle, int steps)
    {
        int turn = 360 * steps, turned = (angle % turn + turn) % turn;
        int half = 2 * turned > turn ? turn - turned : turned;
        (int acute, int sign) = 4 * half > turn ? (turn / 2 - half, -1) : (half, 1);
        return 4 * acute == turn ? (0, 0) : 6 * acute == turn ? (0, sign) : (acute, 2 * sign);
    }
}
