namespace Explain;

/// <summary>Which values quantities of a figure can have.</summary>
internal static class Size
{
    private static readonly Exact Straight = Exact.Of(180), Full = Exact.Of(360);

    /// <summary>A length or an area is positive; an angle is between 0° and 180°, one that is reflex between 180° and 360°.</summary>
    public static bool Fits(Symbol of, Value value) => of switch
    {
        Length or DistanceToLine or Explain.Measure => IsAbove(value, Exact.Zero),
        Angle { Reflex: true } => IsAbove(value.In(Unit.Degree), Straight) && IsBelow(value.In(Unit.Degree), Full),
        Angle => IsAbove(value, Exact.Zero) && IsBelow(value.In(Unit.Degree), Straight),
        _ => true,
    };

    private static bool IsAbove(Value value, Exact limit) => value.Exact is { } exact ? exact.CompareTo(limit) > 0 : value.True.Low > limit.Rational!.Value;

    private static bool IsBelow(Value value, Exact limit) => value.Exact is { } exact ? exact.CompareTo(limit) < 0 : value.True.High < limit.Rational!.Value;
}
