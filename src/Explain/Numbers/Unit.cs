using Fractions;

namespace Explain;

/// <summary>
/// A unit with its exact rational factor to the metre (to a power) or to the degree. Units are equal when kind, power and
/// factor are.
/// </summary>
public sealed class Unit : IEquatable<Unit>
{
    /// <summary>No unit: a plain number.</summary>
    public static readonly Unit None = new("", Dimension.Length, 0, 1);

    /// <summary>The millimetre.</summary>
    public static readonly Unit Millimetre = new("mm", Dimension.Length, 1, new Fraction(1, 1000));

    /// <summary>The centimetre.</summary>
    public static readonly Unit Centimetre = new("cm", Dimension.Length, 1, new Fraction(1, 100));

    /// <summary>The metre.</summary>
    public static readonly Unit Metre = new("m", Dimension.Length, 1, 1);

    /// <summary>The kilometre.</summary>
    public static readonly Unit Kilometre = new("km", Dimension.Length, 1, 1000);

    /// <summary>The international inch, exactly 2.54 cm.</summary>
    public static readonly Unit Inch = new("in", Dimension.Length, 1, new Fraction(127, 5000));

    /// <summary>The international foot, 12 inches.</summary>
    public static readonly Unit Foot = new("ft", Dimension.Length, 1, new Fraction(12 * 127, 5000));

    /// <summary>The international yard, 3 feet.</summary>
    public static readonly Unit Yard = new("yd", Dimension.Length, 1, new Fraction(36 * 127, 5000));

    /// <summary>The international mile, 1760 yards.</summary>
    public static readonly Unit Mile = new("mi", Dimension.Length, 1, new Fraction(1760 * 36 * 127, 5000));

    /// <summary>The degree.</summary>
    public static readonly Unit Degree = new("°", Dimension.Angle, 1, 1);

    /// <summary>The minute of angle.</summary>
    public static readonly Unit Minute = new("′", Dimension.Angle, 1, new Fraction(1, 60));

    /// <summary>The second of angle.</summary>
    public static readonly Unit Second = new("″", Dimension.Angle, 1, new Fraction(1, 3600));

    private Unit(string symbol, Dimension dimension, int power, Fraction factor) =>
        (Symbol, Dimension, Power, Factor) = (symbol, dimension, power, factor);

    /// <summary>The units that a problem may use, squares apart.</summary>
    public static Items<Unit> Table { get; } =
        [Millimetre, Centimetre, Metre, Kilometre, Inch, Foot, Yard, Mile, Degree, Minute, Second];

    /// <summary>Its sign, such as m, m² or °; empty for a plain number.</summary>
    public string Symbol { get; }

    /// <summary>What it measures.</summary>
    public Dimension Dimension { get; }

    /// <summary>The power of length: 0 for a plain number, 1 for a length, 2 for an area; 1 for an angle.</summary>
    public int Power { get; }

    /// <summary>How many metres (to the power) or degrees it is, exactly.</summary>
    public Fraction Factor { get; }

    /// <summary>Whether it measures angles.</summary>
    public bool IsAngle => Dimension == Dimension.Angle;

    /// <summary>Whether two units are the same.</summary>
    public static bool operator ==(Unit? left, Unit? right) => left is null ? right is null : left.Equals(right);

    /// <summary>Whether two units differ.</summary>
    public static bool operator !=(Unit? left, Unit? right) => !(left == right);

    /// <summary>Reads a unit: a sign of the table, with ² or ^2 for a square; deg, ', ". Null when it is none.</summary>
    public static Unit? Parse(string text)
    {
        string plain = text switch { "deg" or "degrees" or "º" => "°", "'" or "’" => "′", "\"" or "”" or "''" => "″", _ => text };
        if (Table.FirstOrDefault(u => u.Symbol == plain) is { } unit) return unit;
        string root = plain.EndsWith("^2", StringComparison.Ordinal) ? plain[..^2] : plain.EndsWith('²') ? plain[..^1] : "";
        return Table.FirstOrDefault(u => u.Symbol == root && !u.IsAngle)?.To(2);
    }

    /// <summary>Whether values in both may be compared and added.</summary>
    public bool SameKind(Unit other) => Dimension == other.Dimension && Power == other.Power;

    /// <summary>The unit of a product; null where an angle is multiplied by anything but a number.</summary>
    public Unit? Times(Unit other) => Power == 0 ? other : other.Power == 0 ? this : IsAngle || other.IsAngle ? null : Combined(other, 1);

    /// <summary>The unit of a quotient, which may be a plain number; null where the kinds do not go together.</summary>
    public Unit? Per(Unit other) => other.Power == 0 ? this : SameKind(other) ? None : IsAngle || other.IsAngle ? null : Combined(other, -1);

    /// <summary>The length unit to a power, 0 or more.</summary>
    public Unit To(int power)
    {
        if (power == 0) return None;
        Fraction factor = 1;
        for (int i = 0; i < power; i++) factor *= Factor;
        return new(power == 1 ? Symbol : Symbol + (power == 2 ? "²" : power == 3 ? "³" : "^" + power.ToString(System.Globalization.CultureInfo.InvariantCulture)), Dimension, power, factor);
    }

    /// <summary>How many of the other unit one of this is, exactly.</summary>
    /// <exception cref="ArgumentException">The units are of different kinds.</exception>
    public Fraction FactorTo(Unit other) => SameKind(other) ? Factor / other.Factor : throw new ArgumentException(other.Symbol, nameof(other));

    /// <inheritdoc/>
    public bool Equals(Unit? other) => other is not null && SameKind(other) && Factor == other.Factor;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Unit);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Dimension, Power, Factor);

    /// <inheritdoc/>
    public override string ToString() => Symbol;

    /// <summary>The square root's or product's unit, named after the base unit whose factor it is a power of.</summary>
    private Unit? Combined(Unit other, int sign)
    {
        int power = Power + sign * other.Power;
        Unit root = Table.First(u => !u.IsAngle && u.To(Power).Factor == Factor);
        return power < 0 ? null : root.To(power);
    }
}
