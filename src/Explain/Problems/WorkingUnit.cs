namespace Explain;

/// <summary>The unit in which the lengths of a problem are worked out and answered: that of the first length given.</summary>
internal static class WorkingUnit
{
    /// <summary>The unit; null where no length is given.</summary>
    public static Unit? Of(Problem problem) =>
        problem.Given.Select(g => g.Value).OfType<Quantity>().Select(q => q.Unit).FirstOrDefault(u => u is { IsAngle: false, Power: 1 });

    /// <summary>A value with lengths in a unit; an angle or a plain number as it is.</summary>
    public static Value WithLengths(this Value value, Unit unit) => value.Unit is { IsAngle: false, Power: > 0 and var power } ? value.In(unit.To(power)) : value;
}
