namespace Explain;

/// <summary>How a problem wants its answers rounded, and in which units.</summary>
internal static class AnswerRounding
{
    /// <summary>The rule for a value of a unit; null where the problem says nothing of it.</summary>
    public static Rounding? Of(Problem problem, Unit unit)
    {
        Rounding? rule = problem.Round.FirstOrDefault(r => r.Of == Kind(unit))?.Rule ?? problem.Round.FirstOrDefault(r => r.Of is null)?.Rule;
        Items<Unit> parts = Parts(problem, rule, unit);
        return parts.Count == 0 && rule is not { Exact: true } ? rule
            : (rule ?? Rounding.Default(unit)) is var own ? own with { Parts = parts, Fractions = own.Fractions || own.Exact && WritesFractions(problem) } : null;
    }

    /// <summary>Whether exact forms are written with fractions: no measurement is typed as a decimal.</summary>
    public static bool WritesFractions(Problem problem) => !problem.Given.Any(g => g.Typed.Contains('.', StringComparison.Ordinal));

    private static string Kind(Unit unit) => unit switch
    {
        { IsAngle: true } => "angles",
        { Power: 2 } => "areas",
        { Power: 0 } => "ratios",
        _ => "lengths",
    };

    /// <summary>Feet and inches where the first length is typed so; degrees, minutes and seconds as far as the rounding goes. Empty for one unit.</summary>
    private static Items<Unit> Parts(Problem problem, Rounding? rule, Unit unit)
    {
        if (unit.IsAngle) return rule?.Unit == Unit.Minute ? [Unit.Degree, Unit.Minute] : rule?.Unit == Unit.Second ? [Unit.Degree, Unit.Minute, Unit.Second] : [];
        if (unit is not { Power: 1 } || problem.Given.FirstOrDefault(g => g.Of is Length) is not { } first) return [];
        Items<Unit> typed = UnitWords.In(first.Typed);
        return typed.Count > 1 && (rule?.Unit is null || rule.Unit == typed[^1]) ? typed : [];
    }
}
