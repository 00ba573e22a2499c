using Fractions;

namespace Explain;

/// <summary>The roots in a working, each by its square, a cosine sum of earlier roots; and what needs them: products, enclosures.</summary>
internal sealed class RootTable
{
    private const int MostRoots = 12;
    private const int MostTerms = 20_000;

    private readonly List<CosineSum> squares = [];
    private readonly Dictionary<(Fraction, int), Enclosure> cosines = [];

    /// <summary>The root of a sum that is not negative, as a new root; null when there are too many.</summary>
    public CosineSum? Root(CosineSum square)
    {
        if (squares.Count == MostRoots) return null;
        squares.Add(square);
        return CosineSum.Of([(CosineTerm.One with { Roots = 1 << (squares.Count - 1) }, Fraction.One)]);
    }

    public CosineSum Square(int root) => squares[int.Log2(root)];

    /// <summary>The product: cos a cos b = ½ cos(a + b) + ½ cos(a − b), and a root times itself is its square. Null when it is too long.</summary>
    public CosineSum? Times(CosineSum first, CosineSum second)
    {
        if ((long)first.Terms.Count * second.Terms.Count > MostTerms) return null;
        CosineSum? all = CosineSum.Zero;
        var products = from a in first.Parts from b in second.Parts select (Twice: a.Term.Roots & b.Term.Roots, Parts: Times(a, b));
        foreach (var group in products.GroupBy(p => p.Twice, p => p.Parts))
        {
            CosineSum? part = CosineSum.Of(group.SelectMany(p => p));
            for (int root = 1; part is not null && root <= group.Key; root <<= 1)
                if ((group.Key & root) != 0) part = Times(part, Square(root));
            if (part is null) return null;
            all += part;
        }

        return all;
    }

    public Enclosure Enclose(CosineSum sum, int bits)
    {
        Enclosure all = Enclosure.Of(Fraction.Zero, bits);
        foreach ((CosineTerm term, Fraction times) in sum.Parts)
        {
            Enclosure product = Cosine(term.Angle, bits) * times;
            for (int root = 1; root <= term.Roots; root <<= 1)
                if ((term.Roots & root) != 0) product *= EncloseRoot(root, bits);
            if (term.PiPower > 0) product *= Enclosure.Power(Trigonometry.Pi(bits), term.PiPower);
            all += product;
        }

        return all;
    }

    private static IEnumerable<(CosineTerm, Fraction)> Times((CosineTerm Term, Fraction Times) a, (CosineTerm Term, Fraction Times) b)
    {
        CosineTerm product = new(a.Term.Angle + b.Term.Angle, a.Term.PiPower + b.Term.PiPower, a.Term.Roots ^ b.Term.Roots);
        Fraction half = a.Times * b.Times / 2;
        return [(product, half), (product with { Angle = a.Term.Angle - b.Term.Angle }, half)];
    }

    private Enclosure EncloseRoot(int root, int bits) =>
        Enclosure.Sqrt(Enclosing.NotNegative(Enclose(Square(root), bits)))!.Value;

    private Enclosure Cosine(Fraction angle, int bits) => cosines.TryGetValue((angle, bits), out Enclosure known) ? known
        : cosines[(angle, bits)] = Trigonometry.Cos(angle, bits);
}
