namespace Explain;

/// <summary>The unit in which the lengths of a problem are worked out and answered: that of the first length given, or of the first area where no length is.</summary>
internal static class WorkingUnit
{
    /// <summary>The unit; null where no length and no area is given.</summary>
    public static Unit? Of(Problem problem)
    {
        Unit[] units = [.. problem.Given.Select(g => g.Value).OfType<Quantity>().Select(q => q.Unit).Where(u => !u.IsAngle)];
        return units.FirstOrDefault(u => u.Power == 1) ?? units.Where(u => u.Power == 2).Select(a => Unit.Table.First(u => u is { IsAngle: false, Power: 1 } && u.To(2) == a)).FirstOrDefault();
    }

    /// <summary>A value with lengths in a unit; an angle or a plain number as it is.</summary>
    public static Value WithLengths(this Value value, Unit unit) => value.Unit is { IsAngle: false, Power: > 0 and var power } ? value.In(unit.To(power)) : value;
}
