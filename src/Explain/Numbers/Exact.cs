using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>
/// An exact number in one normal form, so that equality is comparison: a sum of at most 16 terms rational × √n × πᵏ, or a
/// rational times one root of a positive surd sum without π that is not a square there. Operations that leave this class give
/// null: the value then has no exact form here. Immutable.
/// </summary>
public sealed class Exact : IEquatable<Exact>
{
    /// <summary>Nought.</summary>
    public static readonly Exact Zero = Of(0);

    /// <summary>One.</summary>
    public static readonly Exact One = Of(1);

    /// <summary>The ratio of a circle's circumference to its diameter.</summary>
    public static readonly Exact Pi = new(SurdSum.Of(1, 1, 1), null);

    /// <summary>The whole, or the factor in front of the root, which is then rational.</summary>
    private readonly SurdSum front;

    private readonly SurdSum? under;

    private Exact(SurdSum front, SurdSum? under) => (this.front, this.under) = (front, under);

    /// <summary>The rational number it is; null when it is none.</summary>
    public Fraction? Rational => under is null ? front.Rational : null;

    /// <summary>Whether it is shown with a root around a sum.</summary>
    public bool IsNested => under is not null;

    /// <summary>1, 0 or −1.</summary>
    public int Sign => front.IsZero ? 0 : Enclosure.Ladder.Select(bits => Enclose(bits).Sign).First(s => s is not null)!.Value;

    internal SurdSum Front => front;

    internal SurdSum? Under => under;

    /// <summary>Whether two are the same number.</summary>
    public static bool operator ==(Exact? left, Exact? right) => left is null ? right is null : left.Equals(right);

    /// <summary>Whether two are different numbers.</summary>
    public static bool operator !=(Exact? left, Exact? right) => !(left == right);

    /// <summary>A rational number.</summary>
    public static Exact Of(Fraction value) => new(SurdSum.Of(value), null);

    /// <summary>A whole number.</summary>
    public static Exact Of(long value) => Of(new Fraction(value));

    /// <summary>The sum, or null.</summary>
    public static Exact? Add(Exact left, Exact right)
    {
        if (left.front.IsZero) return right;
        if (right.front.IsZero) return left;
        if (left.under is null && right.under is null) return Bounded(left.front.Plus(right.front));
        if (left.under is null || right.under is null || !left.under.Equals(right.under)) return null;
        SurdSum sum = left.front.Plus(right.front);
        return sum.IsZero ? Zero : new(sum, left.under);
    }

    /// <summary>The difference, or null.</summary>
    public static Exact? Subtract(Exact left, Exact right) => Add(left, right.Negate());

    /// <summary>The product, or null.</summary>
    public static Exact? Multiply(Exact left, Exact right)
    {
        if (left.front.IsZero || right.front.IsZero) return Zero;
        if (left.under is null && right.under is null) return Bounded(left.front.Times(right.front));
        if (left.Rational is { } a) return new(right.front.Times(a), right.under);
        if (right.Rational is { } b) return new(left.front.Times(b), left.under);
        Exact? root = Root(new(left.Square().Times(right.Square()), null));
        return root is null ? null : left.Sign == right.Sign ? root : root.Negate();
    }

    /// <summary>The quotient, or null; null also for a divisor of 0.</summary>
    public static Exact? Divide(Exact left, Exact right)
    {
        if (right.front.IsZero) return null;
        if (right.under is null) return right.front.Reciprocal() is { } reciprocal ? Multiply(left, new(reciprocal, null)) : null;
        Exact? inverse = right.under.Reciprocal() is { } under ? Root(new(under, null)) : null;
        return inverse is null || Multiply(left, inverse) is not { } quotient ? null : Multiply(quotient, Of(1 / right.front.Rational!.Value));
    }

    /// <summary>A whole power, 0 or more, or null.</summary>
    public static Exact? Power(Exact of, int exponent)
    {
        Exact? result = One;
        for (int i = 0; i < exponent && result is not null; i++) result = Multiply(result, of);
        return result;
    }

    /// <summary>The square root that is not negative, or null.</summary>
    public static Exact? Root(Exact of) => of.under is not null ? null : of.front.IsZero ? Zero : of.Sign < 0 ? null : NestedRoot.Of(of.front);

    /// <summary>The negative.</summary>
    public Exact Negate() => new(front.Times(-1), under);

    /// <summary>An enclosure of it.</summary>
    public Enclosure Enclose(int bits) => under is null ? front.Enclose(bits)
        : front.Enclose(bits) * Enclosure.Sqrt(under.Enclose(2 * bits))!.Value;

    /// <inheritdoc/>
    public bool Equals(Exact? other) => other is not null && front.Equals(other.front) && Equals(under, other.under);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Exact);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(front, under);

    /// <summary>The number in the grammar of problem files, fractions as fractions.</summary>
    public override string ToString() => ExactText.Write(this, decimals: false);

    internal static Exact Nested(Fraction factor, SurdSum under) => new(SurdSum.Of(factor), under);

    internal static Exact? Bounded(SurdSum sum) => sum.Count > SurdSum.MostTerms ? null : new(sum, null);

    /// <summary>The square as a surd sum.</summary>
    private SurdSum Square() => under is null ? front.Times(front) : front.Times(front).Times(under);
}
