using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>
/// Decides whether a rational combination of cosines of rational angles is 0. 2 cos a is a root of unity and its inverse. Among the n-th roots of unity
/// all relations come from the fact that those p steps of n/p apart add up to 0, one for each prime p of n; so in each such
/// group the one whose leading digit to base p is p − 1 is written by the others, and what is left is independent.
/// </summary>
internal static class RootsOfUnity
{
    private static readonly BigInteger MostParts = 1_000_000;

    /// <summary>Null when the angles are too fine to decide.</summary>
    public static bool? IsZero(IEnumerable<(Fraction Angle, Fraction Times)> cosines)
    {
        List<(Fraction Part, Fraction Times)> terms = [.. cosines.Select(c => ((Whole.Modulo(c.Angle, 360) / 360).Reduce(), c.Times))];
        BigInteger parts = terms.Aggregate(BigInteger.One, (all, t) => all / BigInteger.GreatestCommonDivisor(all, t.Part.Denominator) * t.Part.Denominator);
        if (parts > MostParts) return null;
        int n = (int)parts;
        Dictionary<int, Fraction> powers = [];
        foreach ((Fraction part, Fraction times) in terms)
        {
            int power = (part * n).ToInt32();
            Add(powers, power, times);
            Add(powers, (n - power) % n, times);
        }

        foreach (int prime in Primes(n)) Reduce(powers, n, prime);
        return powers.Values.All(v => v.IsZero);
    }

    private static void Reduce(Dictionary<int, Fraction> powers, int n, int prime)
    {
        int full = prime;
        while (n / full % prime == 0) full *= prime;
        foreach (int power in powers.Keys.Where(k => k % full / (full / prime) == prime - 1).ToArray())
        {
            powers.Remove(power, out Fraction times);
            for (int step = 1; step < prime; step++) Add(powers, (int)((power + (long)step * (n / prime)) % n), -times);
        }
    }

    private static void Add(Dictionary<int, Fraction> powers, int power, Fraction times) =>
        powers[power] = powers.GetValueOrDefault(power) + times;

    private static IEnumerable<int> Primes(int number)
    {
        for (int divisor = 2; divisor <= number; divisor++)
        {
            if (number % divisor != 0) continue;
            yield return divisor;
            while (number % divisor == 0) number /= divisor;
        }
    }
}
