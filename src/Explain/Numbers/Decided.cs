using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>Whole numbers read off values: decided by the exact form or by both ends of an enclosure, never guessed.</summary>
internal static class Decided
{
    /// <summary>The floor of value × scale + shift.</summary>
    /// <exception cref="UndecidedException">The enclosure does not say, at any precision.</exception>
    public static BigInteger Floor(Value value, Fraction scale, Fraction shift)
    {
        if (value.Exact?.Rational is { } rational)
        {
            return Whole.Floor(rational * scale + shift);
        }

        return Enclosures(value)
            .Select(e => Floor(e, scale, shift))
            .FirstOrDefault(f => f is not null) ?? throw new UndecidedException();
    }

    public static BigInteger Ceiling(Value value, Fraction scale) => -Floor(value, -scale, Fraction.Zero);

    /// <summary>The nearest whole number to value × scale; halves go away from zero.</summary>
    public static BigInteger Nearest(Value value, Fraction scale) => IsNegative(value)
        ? -Floor(value, -scale, new Fraction(1, 2))
        : Floor(value, scale, new Fraction(1, 2));

    public static bool IsNegative(Value value) => (value.Exact?.Sign ?? value.True.Sign ?? throw new UndecidedException()) < 0;

    /// <summary>Whether the value is this rational number.</summary>
    /// <exception cref="UndecidedException">There is no exact form, and the enclosure holds that number.</exception>
    public static bool Equals(Value value, Fraction number) => value.Exact is { } exact
        ? exact.Rational == number
        : value.True.Contains(number) ? throw new UndecidedException() : false;

    private static IEnumerable<Enclosure> Enclosures(Value value) => value.Exact is { } exact
        ? Enclosure.Ladder.Select(exact.Enclose).Prepend(value.True)
        : [value.True];

    private static BigInteger? Floor(Enclosure enclosure, Fraction scale, Fraction shift)
    {
        var (a, b) = (Whole.Floor(enclosure.Low * scale + shift), Whole.Floor(enclosure.High * scale + shift));
        return a == b ? a : null;
    }
}
