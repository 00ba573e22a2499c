using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>
/// What cosine sums of one working share: the step of their angles, and their roots, each by its square, a cosine sum of earlier roots.
/// Makes sums, products and enclosures.
/// </summary>
internal sealed class CosineTable(int steps)
{
    private const int MostRoots = 12;
    private const int MostProducts = 2_000_000;

    private readonly List<CosineSum> squares = [];
    private readonly Dictionary<(int, int), Enclosure> cosines = [];

    public CosineSum Zero { get; } = CosineSum.Of([], BigInteger.One, steps);

    public CosineSum One { get; } = CosineSum.Of([(CosineTerm.One, BigInteger.One)], BigInteger.One, steps);

    public CosineSum Number(Fraction value) => One * value;

    /// <summary>The cosine of a whole number of steps.</summary>
    public CosineSum Cosine(Fraction degrees) => Of(new((Whole.Modulo(degrees, 360) * steps).ToInt32(), 0, 0));

    public CosineSum Pi(int power) => Of(new(0, power, 0));

    /// <summary>The root of a sum that is not negative, as a new root; null when there are too many.</summary>
    public CosineSum? Root(CosineSum square)
    {
        if (squares.Count == MostRoots) return null;
        squares.Add(square);
        return Of(new(0, 0, 1 << (squares.Count - 1)));
    }

    public CosineSum Square(int root) => squares[int.Log2(root)];

    /// <summary>The product: cos a cos b = ½ cos(a + b) + ½ cos(a − b), and a root times itself is its square. Null when it is too long.</summary>
    public CosineSum? Times(CosineSum first, CosineSum second)
    {
        if ((long)first.Terms.Count * second.Terms.Count > MostProducts) return null;
        CosineSum? all = Zero;
        foreach (var left in first.Parts.GroupBy(p => p.Term.Roots))
        {
            foreach (var right in second.Parts.GroupBy(p => p.Term.Roots))
            {
                CosineSum plain = CosineSum.Of(left.SelectMany(a => right.SelectMany(b => Times(a, b))), 2 * first.Denominator * second.Denominator, steps);
                if (Squared(plain, left.Key & right.Key) is not { } part) return null;
                all += part;
            }
        }

        return all;
    }

    public Enclosure Enclose(CosineSum sum, int bits)
    {
        Enclosure all = Enclosure.Of(Fraction.Zero, bits);
        foreach ((CosineTerm term, BigInteger times) in sum.Parts)
        {
            Enclosure product = Cosine(term.Angle, bits) * new Fraction(times);
            for (int root = 1; root <= term.Roots; root <<= 1)
                if ((term.Roots & root) != 0) product *= EncloseRoot(root, bits);
            if (term.PiPower > 0) product *= Enclosure.Power(Trigonometry.Pi(bits), term.PiPower);
            all += product;
        }

        return all * new Fraction(BigInteger.One, sum.Denominator);
    }

    private CosineSum Of(CosineTerm term) => CosineSum.Of([(term, BigInteger.One)], BigInteger.One, steps);

    /// <summary>Multiplied by the squares of roots.</summary>
    private CosineSum? Squared(CosineSum? sum, int roots)
    {
        for (int root = 1; sum is not null && root <= roots; root <<= 1)
            if ((roots & root) != 0) sum = Times(sum, Square(root));
        return sum;
    }

    private static IEnumerable<(CosineTerm, BigInteger)> Times((CosineTerm Term, BigInteger Times) a, (CosineTerm Term, BigInteger Times) b)
    {
        CosineTerm product = new(a.Term.Angle + b.Term.Angle, a.Term.PiPower + b.Term.PiPower, a.Term.Roots ^ b.Term.Roots);
        BigInteger half = a.Times * b.Times;
        yield return (product, half);
        yield return (product with { Angle = a.Term.Angle - b.Term.Angle }, half);
    }

    private Enclosure EncloseRoot(int root, int bits) =>
        Enclosure.Sqrt(Enclosing.NotNegative(Enclose(Square(root), bits)))!.Value;

    private Enclosure Cosine(int angle, int bits) => cosines.TryGetValue((angle, bits), out Enclosure known) ? known
        : cosines[(angle, bits)] = Trigonometry.Cos(new Fraction(angle, steps), bits);
}
