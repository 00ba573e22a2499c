using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>
/// A sum of rational × √n × a power of π, every n squarefree: a normal form, since the roots of squarefree numbers are linearly
/// independent over the rationals (Besicovitch 1940) and π is transcendental (Lindemann 1882); both cited from memory.
/// </summary>
internal sealed class SurdSum : IEquatable<SurdSum>
{
    public const int MostTerms = 16;

    private readonly SortedDictionary<(int Pi, BigInteger Root), Fraction> terms;

    private SurdSum(SortedDictionary<(int Pi, BigInteger Root), Fraction> terms) => this.terms = terms;

    public IEnumerable<(Fraction Factor, BigInteger Root, int Pi)> Terms => terms.Select(t => (t.Value, t.Key.Root, t.Key.Pi));

    public int Count => terms.Count;

    public bool IsZero => terms.Count == 0;

    public Fraction? Rational => IsZero ? Fraction.Zero : terms.Count == 1 && terms.TryGetValue((0, 1), out Fraction only) ? only : null;

    public static SurdSum Of(Fraction factor, BigInteger root = default, int pi = 0) => Sum([(factor, root.IsZero ? 1 : root, pi)]);

    /// <summary>The sum of terms whose roots are squarefree.</summary>
    public static SurdSum Sum(IEnumerable<(Fraction Factor, BigInteger Root, int Pi)> parts)
    {
        SortedDictionary<(int, BigInteger), Fraction> terms = [];
        foreach ((Fraction factor, BigInteger root, int pi) in parts)
        {
            Fraction total = terms.GetValueOrDefault((pi, root)) + factor;
            if (total.IsZero) terms.Remove((pi, root));
            else terms[(pi, root)] = total;
        }

        return new(terms);
    }

    public SurdSum Plus(SurdSum other) => Sum(Terms.Concat(other.Terms));

    public SurdSum Times(SurdSum other) => Sum(Terms.SelectMany(a => other.Terms.Select(b => Product(a, b))));

    public SurdSum Times(Fraction factor) => Sum(Terms.Select(t => (t.Factor * factor, t.Root, t.Pi)));

    /// <summary>1 divided by this; null where no such form exists or it would need too much.</summary>
    public SurdSum? Reciprocal()
    {
        if (IsZero || terms.Keys.Select(k => k.Pi).Distinct().Count() > 1) return null;
        int pi = terms.Keys.First().Pi;
        SurdSum top = Of(1, 1, -pi), bottom = Sum(Terms.Select(t => (t.Factor, t.Root, 0)));
        for (int rounds = 0; bottom.Rational is null; rounds++)
        {
            if (rounds == 3 || bottom.Terms.Select(t => Squares.Factor(t.Root)).FirstOrDefault(f => f > 1) is not { IsZero: false } prime) return null;
            SurdSum conjugate = Sum(bottom.Terms.Select(t => ((t.Root % prime).IsZero ? -t.Factor : t.Factor, t.Root, t.Pi)));
            (top, bottom) = (top.Times(conjugate), bottom.Times(conjugate));
            if (top.Count > MostTerms) return null;
        }

        return top.Times(1 / bottom.Rational.Value);
    }

    public Enclosure Enclose(int bits)
    {
        Enclosure sum = Enclosure.Of(0, bits);
        foreach ((Fraction factor, BigInteger root, int pi) in Terms)
        {
            Enclosure term = Enclosure.Of(factor, bits) * Enclosure.Sqrt(Enclosure.Of(new Fraction(root), bits))!.Value;
            for (int i = 0; i < pi; i++) term *= Trigonometry.Pi(bits);
            for (int i = 0; i > pi; i--) term = Enclosure.Divide(term, Trigonometry.Pi(bits))!.Value;
            sum += term;
        }

        return sum;
    }

    public bool Equals(SurdSum? other) => other is not null && terms.SequenceEqual(other.terms);

    public override bool Equals(object? obj) => Equals(obj as SurdSum);

    public override int GetHashCode() => terms.Aggregate(0, (hash, term) => HashCode.Combine(hash, term.Key, term.Value));

    private static (Fraction Factor, BigInteger Root, int Pi) Product((Fraction Factor, BigInteger Root, int Pi) a, (Fraction Factor, BigInteger Root, int Pi) b)
    {
        BigInteger common = BigInteger.GreatestCommonDivisor(a.Root, b.Root);
        return (a.Factor * b.Factor * new Fraction(common), a.Root / common * (b.Root / common), a.Pi + b.Pi);
    }
}
