using System.Collections.Immutable;
using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>
/// A sum of terms q√n π^k, like terms put together, in falling order. Roots of different squarefree numbers are
/// independent over the rationals (Besicovitch) and π is transcendental (Lindemann), so equal numbers have equal terms.
/// </summary>
internal sealed class SurdSum : IEquatable<SurdSum>
{
    /// <summary>Longer sums are given up: nobody can use them.</summary>
    public const int MostTerms = 16;

    private SurdSum(ImmutableArray<SurdTerm> terms) => Terms = terms;

    public static SurdSum Zero { get; } = new([]);

    public ImmutableArray<SurdTerm> Terms { get; }

    public bool IsZero => Terms.IsEmpty;

    public bool HasPi => Terms.Any(t => t.PiPower != 0);

    public Fraction? Rational => IsZero ? Fraction.Zero
        : Terms.Length == 1 && Terms[0].IsRational ? Terms[0].Coefficient
        : null;

    public static SurdSum Of(SurdTerm term) => term.Coefficient.IsZero ? Zero : new([term]);

    public static SurdSum Of(Fraction value) => Of(new SurdTerm(value.Reduce(), BigInteger.One, 0));

    /// <summary>The sum of the terms, or null when it is too long.</summary>
    public static SurdSum? Of(IEnumerable<SurdTerm> terms)
    {
        var collected = terms
            .GroupBy(t => (t.PiPower, t.Radicand))
            .Select(g => new SurdTerm(g.Aggregate(Fraction.Zero, (sum, t) => sum + t.Coefficient), g.Key.Radicand, g.Key.PiPower))
            .Where(t => !t.Coefficient.IsZero)
            .OrderByDescending(t => t.PiPower)
            .ThenByDescending(t => t.Radicand)
            .ToImmutableArray();
        return collected.Length > MostTerms ? null : new(collected);
    }

    public static SurdSum? operator +(SurdSum first, SurdSum second) =>
        first.IsZero ? second : second.IsZero ? first : Of(first.Terms.Concat(second.Terms));

    public static SurdSum? operator *(SurdSum first, SurdSum second) =>
        Of(from a in first.Terms from b in second.Terms select a * b);

    public static SurdSum operator -(SurdSum value) => value * Fraction.MinusOne;

    public static SurdSum operator *(SurdSum value, Fraction factor) => factor.IsZero
        ? Zero
        : new([.. value.Terms.Select(t => t with { Coefficient = t.Coefficient * factor })]);

    /// <summary>The sum with every power of π raised by the same number.</summary>
    public SurdSum TimesPi(int power) => new([.. Terms.Select(t => t with { PiPower = t.PiPower + power })]);

    /// <summary>The positive rational that divides all coefficients and leaves whole ones without a common divisor; 1 for 0.</summary>
    public Fraction Content()
    {
        if (IsZero)
        {
            return Fraction.One;
        }

        var top = Terms.Aggregate(BigInteger.Zero, (d, t) => BigInteger.GreatestCommonDivisor(d, t.Coefficient.Numerator));
        var bottom = Terms.Aggregate(BigInteger.One, (m, t) => m / BigInteger.GreatestCommonDivisor(m, t.Coefficient.Denominator) * t.Coefficient.Denominator);
        return new(top, bottom);
    }

    /// <summary>Decided: an enclosure of a sum that is not 0 leaves 0 out at some precision.</summary>
    public int Sign()
    {
        if (Terms.Length < 2)
        {
            return IsZero ? 0 : Terms[0].Coefficient.IsPositive ? 1 : -1;
        }

        for (var bits = Enclosure.Ladder[0]; ; bits *= 2)
        {
            if (Enclose(bits).Sign is { } sign)
            {
                return sign;
            }
        }
    }

    public Enclosure Enclose(int bits)
    {
        const int Guard = 16;
        return Terms.Aggregate(Enclosure.Of(0, bits + Guard), (sum, term) => sum + Enclose(term, bits + Guard)).At(bits);
    }

    public bool Equals(SurdSum? other) => other is not null && Terms.SequenceEqual(other.Terms);

    public override bool Equals(object? obj) => Equals(obj as SurdSum);

    public override int GetHashCode() => Terms.Aggregate(0, HashCode.Combine);

    private static Enclosure Enclose(SurdTerm term, int bits)
    {
        var root = Enclosure.Sqrt(Enclosure.Of(term.Radicand, bits))!.Value;
        var pi = Enclosure.Power(Trigonometry.Pi(bits), int.Abs(term.PiPower));
        var powers = term.PiPower < 0 ? Enclosure.Divide(root, pi)!.Value : root * pi;
        return powers * term.Coefficient;
    }
}
