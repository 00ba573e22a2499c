using System.Globalization;

namespace Explain.Generators;

/// <summary>A unit: a sign of the unit table and its power. None is a plain number.</summary>
internal sealed record UnitModel(string Sign, int Power)
{
    public static readonly UnitModel None = new("", 0);

    public static readonly UnitModel Degree = new("°", 1);

    private static readonly Dictionary<string, string> Names = new()
    {
        ["mm"] = "Millimetre", ["cm"] = "Centimetre", ["m"] = "Metre", ["km"] = "Kilometre", ["in"] = "Inch", ["ft"] = "Foot", ["yd"] = "Yard", ["mi"] = "Mile",
        ["°"] = "Degree", ["′"] = "Minute", ["″"] = "Second",
    };

    public static IEnumerable<string> Signs => Names.Keys;

    public bool IsNone => Power == 0;

    public bool IsAngle => Sign is "°" or "′" or "″";

    /// <summary>Reads a sign of the table, with ², ³, ^2 or ^3 for a power; null when it is none.</summary>
    public static UnitModel? Parse(string text)
    {
        (string sign, int power) = text.EndsWith("²", StringComparison.Ordinal) || text.EndsWith("^2", StringComparison.Ordinal) ? (text.TrimEnd('²', '2').TrimEnd('^'), 2)
            : text.EndsWith("³", StringComparison.Ordinal) || text.EndsWith("^3", StringComparison.Ordinal) ? (text.TrimEnd('³', '3').TrimEnd('^'), 3) : (text, 1);
        UnitModel unit = new(sign, power);
        return Names.ContainsKey(sign) && (power == 1 || !unit.IsAngle) ? unit : null;
    }

    /// <summary>The unit of a product; null where an angle is multiplied by anything but a number, or two units of length meet.</summary>
    public UnitModel? Times(UnitModel other) => IsNone ? other : other.IsNone ? this : To(Power + other.Power, other);

    /// <summary>The unit of a quotient; null where the kinds do not go together.</summary>
    public UnitModel? Per(UnitModel other) => other.IsNone ? this : other == this ? None : IsNone ? null : To(Power - other.Power, other);

    /// <summary>The unit of a power; null for an angle.</summary>
    public UnitModel? To(int exponent) => IsNone ? this : IsAngle ? null : this with { Power = Power * exponent };

    /// <summary>The unit of a square root; null where there is none.</summary>
    public UnitModel? Root => IsNone ? this : IsAngle || Power % 2 != 0 ? null : this with { Power = Power / 2 };

    /// <summary>As it stands behind a number.</summary>
    public string Suffix => IsNone ? "" : IsAngle ? ToString() : " " + this;

    /// <summary>As C# writes it.</summary>
    public string Emit() => IsNone ? "global::Explain.Unit.None"
        : "global::Explain.Unit." + Names[Sign] + (Power == 1 ? "" : ".To(" + Number.Plain(Power) + ")");

    public override string ToString() => Power switch
    {
        0 => "a plain number",
        1 => Sign,
        2 => Sign + "²",
        3 => Sign + "³",
        _ => Sign + "^" + Power.ToString(CultureInfo.InvariantCulture),
    };

    private UnitModel? To(int power, UnitModel other) => Sign != other.Sign || IsAngle || power < 0 ? null : power == 0 ? None : this with { Power = power };
}
