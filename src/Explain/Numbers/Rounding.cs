using Fractions;

namespace Explain;

/// <summary>How an answer is rounded.</summary>
/// <param name="Kind">Which way.</param>
/// <param name="Digits">How many figures or places; 0 where the kind needs none.</param>
public sealed record Rounding(RoundingKind Kind, int Digits)
{
    /// <summary>The step, for rounding to the nearest of something, a decimal that ends; 0 otherwise.</summary>
    public Fraction Step { get; init; }

    /// <summary>The unit of the step; null where there is none.</summary>
    public Unit? Unit { get; init; }

    /// <summary>Whether the exact form is asked for as well, or alone.</summary>
    public bool Exact { get; init; }

    /// <summary>The units that an answer is split into, biggest first; empty for one unit.</summary>
    public Items<Unit> Parts { get; init; }

    /// <summary>Whether parts of a unit stand as fractions rather than decimals.</summary>
    public bool Fractions { get; init; }

    /// <summary>What holds unless the problem says otherwise: 3 significant figures, angles 1 decimal place.</summary>
    public static Rounding Default(Unit unit) => unit.IsAngle ? new(RoundingKind.DecimalPlaces, 1) : new(RoundingKind.SignificantFigures, 3);

    /// <summary>Whether the exact form is asked for and nothing else.</summary>
    internal bool IsExactAlone => Exact && Kind == RoundingKind.SignificantFigures && Digits == 0;

    /// <summary>The rule for decimals of a value of a unit: where only the exact form is asked for, what holds unless the problem says otherwise.</summary>
    internal Rounding ForDecimals(Unit unit) => IsExactAlone ? Default(unit) with { Exact = true, Fractions = Fractions, Parts = Parts } : this;

    /// <summary>The unit in which a value of a given unit is shown: that of the step, where it fits.</summary>
    internal Unit UnitFor(Unit unit) => Kind == RoundingKind.Nearest && Unit is { } own && own.SameKind(unit) ? own : unit;
}
