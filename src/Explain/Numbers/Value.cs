using Fractions;

namespace Explain;

/// <summary>
/// A value: its exact form where there is one, an enclosure of the truth, and its unit. Two values are equal when all three
/// are. A value that the evaluator made is either exact or holds no decimal of fifteen places or fewer inside its enclosure,
/// so that each of its digits is decided.
/// </summary>
/// <param name="Exact">The exact form; null where there is none in roots and π.</param>
/// <param name="True">The enclosure that holds the true value.</param>
/// <param name="Unit">The unit.</param>
public sealed record Value(Exact? Exact, Enclosure True, Unit Unit)
{
    /// <summary>The double nearest to the true value, in the unit.</summary>
    public double Number => Exact is null ? True.Nearest()
        : Exact.Rational is { } rational ? Doubles.Nearest(rational)
        : Enclosure.Ladder.Select(bits => Exact.Enclose(bits).AgreedDouble()).FirstOrDefault(d => d is not null) ?? True.Nearest();

    /// <summary>An exact value.</summary>
    public static Value Of(Exact exact, Unit unit) => new(exact, exact.Enclose(Enclosure.Ladder[0]), unit);

    /// <summary>The same value in another unit of its kind, converted exactly.</summary>
    /// <exception cref="ArgumentException">The units are of different kinds.</exception>
    public Value In(Unit unit)
    {
        if (unit == Unit) return this with { Unit = unit };
        Fraction factor = Unit.FactorTo(unit);
        Exact? exact = Exact is null ? null : Exact.Multiply(Exact, Exact.Of(factor));
        return new(exact, exact?.Enclose(True.Bits) ?? True * factor, unit);
    }
}
