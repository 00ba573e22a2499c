using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>
/// A number known exactly, in one normal form: a rational number; a sum of rational multiples of roots and powers of π, such as
/// 17π + 18 or 31.5(√2 + 1); or a rational multiple of one nested root, such as √(41 − 20√2). Two are equal exactly when
/// they are the same number. They are ordered by size. Operations give null when the result has no such form.
/// </summary>
public sealed class Exact : IEquatable<Exact>, IComparable<Exact>
{
    private Exact(SurdSum front, SurdSum? under) => (Front, Under) = (front, under);

    /// <summary>0.</summary>
    public static Exact Zero { get; } = new(SurdSum.Zero, null);

    /// <summary>1.</summary>
    public static Exact One { get; } = Of(1);

    /// <summary>π.</summary>
    public static Exact Pi { get; } = new(SurdSum.Of(new SurdTerm(Fraction.One, BigInteger.One, 1)), null);

    /// <summary>The number as a fraction, or null when it is not rational.</summary>
    public Fraction? Rational => Under is null ? Front.Rational : null;

    /// <summary>Whether it is written as a root around a sum.</summary>
    public bool IsNested => Under is not null;

    /// <summary>1, 0 or −1; always decided.</summary>
    public int Sign => Front.Sign();

    /// <summary>The number itself, or what stands before the nested root (then it is rational).</summary>
    internal SurdSum Front { get; }

    /// <summary>What stands under the nested root: whole coefficients whose common divisor is squarefree, and no square of a surd sum.</summary>
    internal SurdSum? Under { get; }

    /// <summary>A rational number.</summary>
    public static Exact Of(Fraction value) => new(SurdSum.Of(value), null);

    /// <summary>A whole number.</summary>
    public static Exact Of(long value) => Of(new Fraction(value));

    /// <summary>The sum; null when it leaves the class (a nested root and something else, in general).</summary>
    public static Exact? Add(Exact first, Exact second)
    {
        if (first.Under is null && second.Under is null)
        {
            return Wrap(first.Front + second.Front);
        }

        return first.Front.IsZero ? second : second.Front.IsZero ? first : AddRoots(first, second);
    }

    /// <summary>The difference; null when it leaves the class.</summary>
    public static Exact? Subtract(Exact first, Exact second) => Add(first, second.Negate());

    /// <summary>The product; null when it leaves the class (a nested root times π).</summary>
    public static Exact? Multiply(Exact first, Exact second)
    {
        if (first.Under is null && second.Under is null)
        {
            return Wrap(first.Front * second.Front);
        }

        if (first.Rational is { } left)
        {
            return second.Times(left);
        }

        return second.Rational is { } right ? first.Times(right) : MultiplyRoots(first, second);
    }

    /// <summary>The quotient; null when the divisor is 0 or the quotient leaves the class, as 1 ÷ (1 + π) does.</summary>
    public static Exact? Divide(Exact dividend, Exact divisor)
    {
        if (divisor.Front.IsZero)
        {
            return null;
        }

        return dividend.MultipleOf(divisor) is { } ratio
            ? Of(ratio)
            : divisor.Inverse() is { } inverse ? Multiply(dividend, inverse) : null;
    }

    /// <summary>A whole power; null when it leaves the class.</summary>
    public static Exact? Power(Exact value, int exponent)
    {
        if (exponent < 0)
        {
            return Power(value, -exponent) is { } power ? Divide(One, power) : null;
        }

        if (exponent < 2)
        {
            return exponent == 0 ? One : value;
        }

        return Power(value, exponent / 2) is { } half && Multiply(half, half) is { } even
            ? exponent % 2 == 0 ? even : Multiply(even, value)
            : null;
    }

    /// <summary>The square root, taken out of its nest where that is possible; null for a negative number or when it leaves the class.</summary>
    public static Exact? Root(Exact value) => value.Under is null ? RootOf(value.Front) : null;

    /// <summary>Whether two are the same number.</summary>
    public static bool operator ==(Exact? left, Exact? right) => left is null ? right is null : left.Equals(right);

    /// <summary>Whether two are different numbers.</summary>
    public static bool operator !=(Exact? left, Exact? right) => !(left == right);

    /// <summary>The opposite number.</summary>
    public Exact Negate() => new(-Front, Under);

    /// <summary>The number between two ends, about as near as this many binary places allow.</summary>
    public Enclosure Enclose(int bits)
    {
        if (Under is null)
        {
            return Front.Enclose(bits);
        }

        for (var work = bits + 32; ; work *= 2)
        {
            var under = Under.Enclose(work);
            if (under.Sign == 1)
            {
                return (Enclosure.Sqrt(under)!.Value * Front.Rational!.Value).At(bits);
            }
        }
    }

    /// <inheritdoc/>
    public int CompareTo(Exact? other)
    {
        if (other is null || Equals(other))
        {
            return other is null ? 1 : 0;
        }

        for (var bits = Enclosure.Ladder[0]; ; bits *= 2)
        {
            if (Enclosure.Less(Enclose(bits), other.Enclose(bits)) is { } less)
            {
                return less ? -1 : 1;
            }
        }
    }

    /// <inheritdoc/>
    public bool Equals(Exact? other) => other is not null && Front.Equals(other.Front) && Equals(Under, other.Under);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Exact);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Front, Under);

    /// <summary>The number in the grammar of problem files, with fractions: 63(√2 + 1)/2.</summary>
    public override string ToString() => ExactText.Write(this, decimals: false);

    private static Exact? Wrap(SurdSum? sum) => sum is null ? null : new(sum, null);

    private static Exact? RootOf(SurdSum sum)
    {
        if (sum.Sign() <= 0)
        {
            return sum.IsZero ? Zero : null;
        }

        var power = sum.Terms[0].PiPower;
        if (power % 2 != 0 || sum.Terms.Any(t => t.PiPower != power))
        {
            return null;
        }

        var root = Denesting.Root(sum.TimesPi(-power));
        return root.Sum is { } plain ? new(plain.TimesPi(power / 2), null)
            : root.IsDecided && power == 0 ? Nested(sum)
            : null;
    }

    private static Exact? Nested(SurdSum sum)
    {
        var content = sum.Content();
        return Squares.Surd(content) is { } outside
            ? new(SurdSum.Of(outside.Coefficient), sum * (outside.Radicand / content))
            : null;
    }

    // With r and s nested roots, (r + s)² = r² + s² + 2rs is a surd sum exactly when rs is one.
    private static Exact? AddRoots(Exact first, Exact second)
    {
        if (first.Under is null || second.Under is null || Multiply(first, second) is not { Under: null } product
            || first.Square() is not { } a || second.Square() is not { } b
            || a + b is not { } squares || squares + product.Front * 2 is not { } square || a + -b is not { } difference)
        {
            return null;
        }

        var sign = first.Sign == second.Sign ? first.Sign : first.Sign * difference.Sign();
        return RootOf(square)?.Times(sign);
    }

    private static Exact? MultiplyRoots(Exact first, Exact second) =>
        !first.Front.HasPi && !second.Front.HasPi && first.Square() is { } a && second.Square() is { } b && a * b is { } square
            ? RootOf(square)?.Times(first.Sign * second.Sign)
            : null;

    private SurdSum? Square() => Front * Front is not { } square ? null : Under is null ? square : square * Under;

    private Exact Times(Fraction factor) => factor.IsZero ? Zero : new(Front * factor, Under);

    private Exact? Inverse() => Under is null
        ? Wrap(Conjugates.Inverse(Front))
        : Conjugates.Inverse(Square()!) is { } square ? RootOf(square)?.Times(Sign) : null;

    private Fraction? MultipleOf(Exact other)
    {
        if (!Equals(Under, other.Under) || Front.IsZero)
        {
            return null;
        }

        var ratio = Front.Terms[0].Coefficient / other.Front.Terms[0].Coefficient;
        return Front.Equals(other.Front * ratio) ? ratio : null;
    }
}
