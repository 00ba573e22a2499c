using Fractions;

namespace Explain.Tests.Formulas;

public sealed class RootsOfUnityTests
{
    [Fact]
    public void Sums_of_relations_are_0_and_one_cosine_more_is_not()
    {
        Random random = new(17);
        for (int i = 0; i < 1000; i++)
        {
            int n = new[] { 12, 15, 36, 60, 84, 100, 360, 720 }[random.Next(8)];
            List<(Fraction, Fraction)> sum = [.. Enumerable.Range(0, random.Next(1, 6)).SelectMany(_ => Relation(n, random))];
            Assert.True(RootsOfUnity.IsZero(sum));
            Assert.False(RootsOfUnity.IsZero(sum.Append((new Fraction(360 * random.Next(n), n) + new Fraction(1, 7), new Fraction(1, random.Next(1, 9))))));
        }
    }

    [Fact]
    public void Angles_too_fine_are_not_decided() => Assert.Null(RootsOfUnity.IsZero([(new Fraction(1, 1_000_000), Fraction.One)]));

    /// <summary>Cosines equally spaced round the turn, as many as a prime of n, times any number.</summary>
    private static IEnumerable<(Fraction Angle, Fraction Times)> Relation(int n, Random random)
    {
        int[] primes = [.. new[] { 2, 3, 5, 7 }.Where(p => n % p == 0)];
        int prime = primes[random.Next(primes.Length)];
        (Fraction start, Fraction times) = (new Fraction(360 * random.Next(n), n), new Fraction(random.Next(1, 50), random.Next(1, 9)));
        return Enumerable.Range(0, prime).Select(k => (start + new Fraction(360 * k, prime), times));
    }
}
