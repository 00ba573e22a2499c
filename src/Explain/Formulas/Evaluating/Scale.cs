using Fractions;

namespace Explain;

/// <summary>
/// The unit of a part of a formula: a unit of the table to a power, negative powers too, which arise on the way
/// (sin A ÷ BC) and are gone from a result.
/// </summary>
internal readonly record struct Scale(Unit Root, int Power)
{
    public static Scale None { get; } = new(Unit.None, 0);

    public static Scale Degree { get; } = new(Unit.Degree, 1);

    public bool IsNumber => Power == 0;

    /// <summary>The unit.</summary>
    /// <exception cref="ArgumentException">The power is negative: no quantity of a problem is measured so.</exception>
    public Unit Unit => IsNumber ? Unit.None : Power > 0 ? (Root.IsAngle ? Root : Root.To(Power)) : throw new ArgumentException(Root.Symbol);

    public static Scale Of(Unit unit) => unit.Power == 0 ? None
        : unit.IsAngle ? new(unit, 1)
        : new(Unit.Table.First(u => !u.IsAngle && u.To(unit.Power) == unit), unit.Power);

    public bool SameKind(Scale other) => Power == other.Power && (IsNumber || Root.IsAngle == other.Root.IsAngle);

    /// <summary>How many of the other one of this is.</summary>
    /// <exception cref="ArgumentException">The kinds differ.</exception>
    public Fraction FactorTo(Scale other) => !SameKind(other) ? throw new ArgumentException(other.Root.Symbol, nameof(other))
        : IsNumber ? Fraction.One
        : Fraction.Pow(Root.FactorTo(other.Root), Power);

    /// <summary>The scale of a product in the first operand's units, and the factor of its amount.</summary>
    public (Scale Scale, Fraction Factor) Times(Scale other)
    {
        if (IsNumber || other.IsNumber) return (IsNumber ? other : this, Fraction.One);
        if (Root.IsAngle != other.Root.IsAngle || (Root.IsAngle && Power + other.Power != 0)) throw new ArgumentException(other.Root.Symbol, nameof(other));
        int power = Power + other.Power;
        return (power == 0 ? None : new(Root, power), Fraction.Pow(other.Root.FactorTo(Root), other.Power));
    }

    public Scale ToThe(int exponent) => IsNumber ? None
        : Root.IsAngle && exponent != -1 ? throw new ArgumentException(Root.Symbol) : new(Root, Power * exponent);

    /// <exception cref="ArgumentException">The quantity has no root, as a length has none.</exception>
    public Scale SquareRoot() => IsNumber ? None
        : Root.IsAngle || Power % 2 != 0 ? throw new ArgumentException(Root.Symbol) : new(Root, Power / 2);
}
