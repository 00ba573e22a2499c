using Fractions;

namespace Explain;

/// <summary>A sum of rational multiples of cosine terms, like terms put together, none 0. Two sums may be equal numbers and have different terms.</summary>
internal sealed class CosineSum
{
    private readonly Dictionary<CosineTerm, Fraction> terms;

    private CosineSum(Dictionary<CosineTerm, Fraction> terms) => this.terms = terms;

    public static CosineSum Zero { get; } = new([]);

    public IReadOnlyDictionary<CosineTerm, Fraction> Terms => terms;

    public bool IsEmpty => terms.Count == 0;

    /// <summary>The number as a fraction where only a plain number is left.</summary>
    public Fraction? Rational => IsEmpty ? Fraction.Zero : terms.Count == 1 && terms.TryGetValue(CosineTerm.One, out Fraction only) ? only : null;

    /// <summary>The roots that occur, as bits.</summary>
    public int Roots => terms.Keys.Aggregate(0, (all, t) => all | t.Roots);

    public static CosineSum Of(Fraction value) => Of([(CosineTerm.One, value)]);

    public static CosineSum Cosine(Fraction degrees) => Of([(CosineTerm.One with { Angle = degrees }, Fraction.One)]);

    /// <summary>Adds up terms whose angles may be any.</summary>
    public static CosineSum Of(IEnumerable<(CosineTerm Term, Fraction Times)> parts)
    {
        Dictionary<CosineTerm, Fraction> terms = [];
        foreach ((CosineTerm term, Fraction times) in parts)
        {
            (Fraction angle, Fraction sign) = Acute(term.Angle);
            CosineTerm key = term with { Angle = angle };
            Fraction sum = (terms.GetValueOrDefault(key) + times * sign).Reduce();
            if (sum.IsZero) terms.Remove(key);
            else terms[key] = sum;
        }

        return new(terms);
    }

    public static CosineSum operator +(CosineSum first, CosineSum second) => Of(first.Parts.Concat(second.Parts));

    public static CosineSum operator -(CosineSum value) => value * Fraction.MinusOne;

    public static CosineSum operator *(CosineSum value, Fraction factor) => Of(value.Parts.Select(p => (p.Term, p.Times * factor)));

    /// <summary>The terms with and without a root, that root taken out of the first.</summary>
    public (CosineSum With, CosineSum Without) Split(int root) => (
        Of(Parts.Where(p => (p.Term.Roots & root) != 0).Select(p => (p.Term with { Roots = p.Term.Roots & ~root }, p.Times))),
        Of(Parts.Where(p => (p.Term.Roots & root) == 0)));

    public IEnumerable<(CosineTerm Term, Fraction Times)> Parts => terms.Select(t => (t.Key, t.Value));

    // cos 60° = ½ is the one rational cosine between 0° and 90° (Niven).
    private static (Fraction Angle, Fraction Times) Acute(Fraction degrees)
    {
        Fraction turned = Whole.Modulo(degrees, 360);
        Fraction half = turned > 180 ? 360 - turned : turned;
        (Fraction angle, Fraction sign) = half > 90 ? (180 - half, Fraction.MinusOne) : (half, Fraction.One);
        return angle == 90 ? (Fraction.Zero, Fraction.Zero) : angle == 60 ? (Fraction.Zero, sign / 2) : (angle.Reduce(), sign);
    }
}
