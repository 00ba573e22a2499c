using System.Globalization;
using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>
/// An interval with the true value inside: two whole numbers over a power of two, always rounded outwards.
/// It may be narrow (one number, known to many bits) or wide (everything a measurement may be).
/// Two enclosures are equal when they have the same ends and the same precision. The default value is the number 0.
/// </summary>
public readonly record struct Enclosure
{
    private readonly BigInteger low;
    private readonly BigInteger high;

    internal Enclosure(BigInteger low, BigInteger high, int bits)
    {
        this.low = low;
        this.high = high;
        Bits = bits;
    }

    /// <summary>The precisions, in bits after the point, that are tried one after the other until a question is decided.</summary>
    public static Items<int> Ladder { get; } = [192, 384, 768, 1536];

    /// <summary>The number of binary places of the two ends.</summary>
    public int Bits { get; }

    /// <summary>The lower end, exactly.</summary>
    public Fraction Low => new(low, BigInteger.One << Bits);

    /// <summary>The upper end, exactly.</summary>
    public Fraction High => new(high, BigInteger.One << Bits);

    /// <summary>The number half way between the ends, exactly.</summary>
    public Fraction Middle => new(low + high, BigInteger.One << (Bits + 1));

    /// <summary>How far apart the ends are.</summary>
    public Fraction Width => new(high - low, BigInteger.One << Bits);

    /// <summary>1 or −1 when every number inside is positive or negative, 0 when only 0 is inside, null when undecided.</summary>
    public int? Sign => low.Sign == high.Sign && low.Sign != 0 ? low.Sign : low.IsZero && high.IsZero ? 0 : null;

    internal BigInteger LowUnits => low;

    internal BigInteger HighUnits => high;

    internal bool IsPoint => low == high;

    /// <summary>The narrowest enclosure of a rational number.</summary>
    /// <param name="value">The number.</param>
    /// <param name="bits">Binary places, 0 or more.</param>
    public static Enclosure Of(Fraction value, int bits) => Between(value, value, bits);

    /// <summary>The narrowest enclosure of everything from one rational number to another.</summary>
    /// <exception cref="ArgumentException">The lower end is greater than the upper.</exception>
    public static Enclosure Between(Fraction low, Fraction high, int bits)
    {
        if (low > high)
        {
            throw new ArgumentException(null, nameof(low));
        }

        return new(
            Whole.FloorDivide(low.Numerator << bits, low.Denominator),
            Whole.CeilingDivide(high.Numerator << bits, high.Denominator),
            bits);
    }

    /// <summary>The smallest enclosure that holds both.</summary>
    public static Enclosure Hull(Enclosure first, Enclosure second)
    {
        var (a, b) = (first.To(second), second.To(first));
        return new(BigInteger.Min(a.low, b.low), BigInteger.Max(a.high, b.high), a.Bits);
    }

    /// <summary>Whether the first number is less than the second; null when the enclosures overlap.</summary>
    public static bool? Less(Enclosure first, Enclosure second)
    {
        var (a, b) = (first.To(second), second.To(first));
        return a.high < b.low ? true : a.low >= b.high ? false : null;
    }

    /// <summary>Whether both may be the same number.</summary>
    public bool Overlaps(Enclosure other) => Less(this, other) != true && Less(other, this) != true;

    /// <summary>Whether the number is inside, the ends included.</summary>
    public bool Contains(Fraction value)
    {
        var scaled = value.Numerator << Bits;
        return low * value.Denominator <= scaled && scaled <= high * value.Denominator;
    }

    /// <summary>The double nearest to the true value when both ends agree on it, otherwise the one nearest to the middle.</summary>
    public double Nearest() => AgreedDouble() ?? Doubles.Nearest(Middle);

    /// <summary>The same interval with fewer or more binary places, rounded outwards.</summary>
    public Enclosure At(int bits) => bits >= Bits
        ? new(low << (bits - Bits), high << (bits - Bits), bits)
        : new(low >> (Bits - bits), -(-high >> (Bits - bits)), bits);

    /// <summary>The sum.</summary>
    public static Enclosure operator +(Enclosure first, Enclosure second)
    {
        var (a, b) = (first.To(second), second.To(first));
        return new(a.low + b.low, a.high + b.high, a.Bits);
    }

    /// <summary>The opposite.</summary>
    public static Enclosure operator -(Enclosure value) => new(-value.high, -value.low, value.Bits);

    /// <summary>The difference.</summary>
    public static Enclosure operator -(Enclosure first, Enclosure second) => first + -second;

    /// <summary>The product.</summary>
    public static Enclosure operator *(Enclosure first, Enclosure second)
    {
        var (a, b) = (first.To(second), second.To(first));
        var (least, most) = Extremes(a.low * b.low, a.low * b.high, a.high * b.low, a.high * b.high);
        return new Enclosure(least, most, 2 * a.Bits).At(a.Bits);
    }

    /// <summary>The product with a rational number; narrower than first enclosing that number.</summary>
    public static Enclosure operator *(Enclosure value, Fraction factor)
    {
        var (a, b) = (value.low * factor.Numerator, value.high * factor.Numerator);
        return new(
            Whole.FloorDivide(BigInteger.Min(a, b), factor.Denominator),
            Whole.CeilingDivide(BigInteger.Max(a, b), factor.Denominator),
            value.Bits);
    }

    /// <summary>The quotient; null when the divisor may be 0.</summary>
    public static Enclosure? Divide(Enclosure dividend, Enclosure divisor)
    {
        var (a, b) = (dividend.To(divisor), divisor.To(dividend));
        if (b.Sign is null or 0)
        {
            return null;
        }

        var (left, right) = b.low.Sign > 0 ? (a.low, a.high) : (-a.high, -a.low);
        var (near, far) = b.low.Sign > 0 ? (b.low, b.high) : (-b.high, -b.low);
        return new(
            Whole.FloorDivide(left << a.Bits, left.Sign >= 0 ? far : near),
            Whole.CeilingDivide(right << a.Bits, right.Sign >= 0 ? near : far),
            a.Bits);
    }

    /// <summary>The square root; null when the number may be negative.</summary>
    public static Enclosure? Sqrt(Enclosure of) => of.low.Sign < 0
        ? null
        : new(Whole.Root(of.low << of.Bits), Whole.RootUp(of.high << of.Bits), of.Bits);

    /// <summary>A whole power, 0 or more, calculated exactly and rounded once; an even power of numbers of both signs begins at 0.</summary>
    public static Enclosure Power(Enclosure of, int exponent)
    {
        if (exponent == 0) return Of(Fraction.One, of.Bits);
        (BigInteger a, BigInteger b) = (BigInteger.Pow(of.low, exponent), BigInteger.Pow(of.high, exponent));
        bool holdsLeast = exponent % 2 == 0 && of.low.Sign < 0 && of.high.Sign > 0;
        BigInteger least = holdsLeast ? BigInteger.Zero : BigInteger.Min(a, b);
        return new Enclosure(least, BigInteger.Max(a, b), of.Bits * exponent).At(of.Bits);
    }

    /// <summary>Both ends, to nine decimals, for a programmer to look at.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"[{Low.ToDouble():F9}, {High.ToDouble():F9}]");

    internal double? AgreedDouble()
    {
        double nearest = Doubles.Nearest(Low);
        return nearest.Equals(Doubles.Nearest(High)) ? nearest : null;
    }

    private Enclosure To(Enclosure other) => other.Bits > Bits ? At(other.Bits) : this;

    private static (BigInteger Least, BigInteger Most) Extremes(BigInteger a, BigInteger b, BigInteger c, BigInteger d) =>
        (BigInteger.Min(BigInteger.Min(a, b), BigInteger.Min(c, d)), BigInteger.Max(BigInteger.Max(a, b), BigInteger.Max(c, d)));
}
