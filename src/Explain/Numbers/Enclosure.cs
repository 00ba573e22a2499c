using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>
/// Two numbers, whole multiples of 2^−Bits, that have the true value between them. Every operation rounds outwards.
/// Immutable; the default value encloses 0 exactly.
/// </summary>
public readonly record struct Enclosure
{
    internal Enclosure(BigInteger low, BigInteger high, int bits) => (LowUnits, HighUnits, Bits) = (low, high, bits);

    /// <summary>The precisions tried in turn until a digit or a sign is decided.</summary>
    public static Items<int> Ladder { get; } = [192, 384, 768, 1536];

    /// <summary>The precision: ends are multiples of 2^−Bits.</summary>
    public int Bits { get; }

    /// <summary>The lower end, exactly.</summary>
    public Fraction Low => new(LowUnits, BigInteger.One << Bits, true);

    /// <summary>The upper end, exactly.</summary>
    public Fraction High => new(HighUnits, BigInteger.One << Bits, true);

    /// <summary>1, −1 or, for exactly zero, 0; null when the enclosure does not tell.</summary>
    public int? Sign => LowUnits.Sign > 0 ? 1 : HighUnits.Sign < 0 ? -1 : LowUnits.IsZero && HighUnits.IsZero ? 0 : null;

    internal BigInteger LowUnits { get; }

    internal BigInteger HighUnits { get; }

    /// <summary>Adds.</summary>
    public static Enclosure operator +(Enclosure left, Enclosure right)
    {
        int bits = Same(ref left, ref right);
        return new(left.LowUnits + right.LowUnits, left.HighUnits + right.HighUnits, bits);
    }

    /// <summary>Subtracts.</summary>
    public static Enclosure operator -(Enclosure left, Enclosure right) => left + -right;

    /// <summary>The negative.</summary>
    public static Enclosure operator -(Enclosure of) => new(-of.HighUnits, -of.LowUnits, of.Bits);

    /// <summary>Multiplies.</summary>
    public static Enclosure operator *(Enclosure left, Enclosure right)
    {
        int bits = Same(ref left, ref right);
        BigInteger a = left.LowUnits * right.LowUnits, b = left.LowUnits * right.HighUnits;
        BigInteger c = left.HighUnits * right.LowUnits, d = left.HighUnits * right.HighUnits;
        BigInteger low = BigInteger.Min(BigInteger.Min(a, b), BigInteger.Min(c, d)), high = BigInteger.Max(BigInteger.Max(a, b), BigInteger.Max(c, d));
        return new(low >> bits, Whole.ShiftUp(high, bits), bits);
    }

    /// <summary>A rational number, as closely as the precision allows.</summary>
    public static Enclosure Of(Fraction value, int bits) => Between(value, value, bits);

    /// <summary>All numbers from one rational to another, rounded outwards.</summary>
    /// <exception cref="ArgumentException">The ends are exchanged.</exception>
    public static Enclosure Between(Fraction low, Fraction high, int bits)
    {
        if (low > high) throw new ArgumentException("low > high", nameof(low));
        return new(Whole.FloorDivide(low.Numerator << bits, low.Denominator), Whole.CeilingDivide(high.Numerator << bits, high.Denominator), bits);
    }

    /// <summary>The quotient; null when the divisor may be 0.</summary>
    public static Enclosure? Divide(Enclosure left, Enclosure right)
    {
        if (right.Sign is null or 0) return null;
        int bits = Same(ref left, ref right);
        if (right.Sign < 0) (left, right) = (-left, -right);
        BigInteger low = left.LowUnits.Sign >= 0 ? right.HighUnits : right.LowUnits, high = left.HighUnits.Sign >= 0 ? right.LowUnits : right.HighUnits;
        return new(Whole.FloorDivide(left.LowUnits << bits, low), Whole.CeilingDivide(left.HighUnits << bits, high), bits);
    }

    /// <summary>The square root; null when the value may be negative.</summary>
    public static Enclosure? Sqrt(Enclosure of) => of.LowUnits.Sign < 0 ? null
        : new(Whole.Root(of.LowUnits << of.Bits), Whole.RootUp(of.HighUnits << of.Bits), of.Bits);

    /// <summary>A whole power, 1 or more; an even power of numbers of both signs begins at 0.</summary>
    public static Enclosure Power(Enclosure of, int exponent)
    {
        Enclosure result = of;
        for (int i = 1; i < exponent; i++) result *= of;
        return exponent % 2 == 0 && result.LowUnits.Sign < 0 ? new(0, result.HighUnits, result.Bits) : result;
    }

    /// <summary>The least enclosure that holds both.</summary>
    public static Enclosure Hull(Enclosure first, Enclosure second)
    {
        int bits = Same(ref first, ref second);
        return new(BigInteger.Min(first.LowUnits, second.LowUnits), BigInteger.Max(first.HighUnits, second.HighUnits), bits);
    }

    /// <summary>Whether a number may be the true value.</summary>
    public bool Contains(Fraction value) => Low <= value && value <= High;

    /// <summary>Whether both may be the same number.</summary>
    public bool Overlaps(Enclosure other) => Low <= other.High && other.Low <= High;

    /// <summary>The double nearest to the true value, or to the middle where the ends leave a choice.</summary>
    public double Nearest() => Doubles.Nearest((Low + High) / 2);

    private static int Same(ref Enclosure left, ref Enclosure right)
    {
        int bits = left.Bits > right.Bits ? left.Bits : right.Bits;
        (left, right) = (left.At(bits), right.At(bits));
        return bits;
    }

    private Enclosure At(int bits) => bits == Bits ? this : new(LowUnits << (bits - Bits), HighUnits << (bits - Bits), bits);
}
