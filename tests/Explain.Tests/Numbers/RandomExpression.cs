using System.Numerics;
using Fractions;

namespace Explain.Tests.Numbers;

/// <summary>A random formula over rational givens, evaluated at once by the library's enclosures and by the second implementation.</summary>
internal sealed class RandomExpression(Random random)
{
    private const int Precision = 192;

    /// <summary>Null where the formula leaves the domain of one of its functions.</summary>
    public (Enclosure Library, BigInteger Reference)? Draw(int depth)
    {
        if (depth == 0) return Given();
        if (Draw(depth - 1) is not var (a, x)) return null;
        switch (random.Next(11))
        {
            case 0: return Two(depth, a, x, (l, r) => l + r, (l, r) => l + r);
            case 1: return Two(depth, a, x, (l, r) => l - r, (l, r) => l - r);
            case 2: return Two(depth, a, x, (l, r) => l * r, SecondOpinion.Times);
            case 3: return Two(depth, a, x, Enclosure.Divide, SecondOpinion.Over);
            case 4: return Enclosure.Sqrt(a) is { } root ? (root, SecondOpinion.Root(x)) : null;
            case 5: return (Trigonometry.Sin(a), SecondOpinion.Sine(x));
            case 6: return (Trigonometry.Cos(a), SecondOpinion.Cosine(x));
            case 7: return Trigonometry.Tan(a) is { } tangent ? (tangent, SecondOpinion.Tangent(x)) : null;
            case 8: return Trigonometry.ArcSin(a) is { } angle ? (angle, SecondOpinion.ArcSine(x)) : null;
            case 9: return Trigonometry.ArcCos(a) is { } other ? (other, SecondOpinion.Of(90) - SecondOpinion.ArcSine(x)) : null;
            default: return (Trigonometry.ArcTan(a), SecondOpinion.ArcTangent(x));
        }
    }

    private (Enclosure, BigInteger) Given()
    {
        Fraction given = random.Next(3) switch
        {
            0 => new Fraction(random.Next(1, 2000), 10),
            1 => new Fraction(random.Next(-100, 100), random.Next(1, 100)),
            _ => new Fraction(random.Next(1, 360)),
        };
        return (Enclosure.Of(given, Precision), SecondOpinion.Of(given));
    }

    private (Enclosure, BigInteger)? Two(
        int depth, Enclosure a, BigInteger x, Func<Enclosure, Enclosure, Enclosure?> library, Func<BigInteger, BigInteger, BigInteger> reference) =>
        Draw(random.Next(depth)) is var (b, y) && library(a, b) is { } result ? (result, reference(x, y)) : null;
}
