namespace Explain;

/// <summary>The points that a problem speaks of.</summary>
internal static class FigurePoints
{
    public static Items<string> Of(Problem problem) =>
    [
        .. problem.Figure.SelectMany(f => Mentions.Points(f.Says))
            .Concat(problem.Given.SelectMany(g => Mentions.Points(g.Of)))
            .Concat(problem.Find.SelectMany(g => g.Wanted is { } wanted ? Mentions.Points(wanted) : []))
            .Concat(problem.Names.SelectMany(n => PointNames.Distinct(n.Of) ?? []))
            .Select(p => p.Name).Distinct(StringComparer.Ordinal),
    ];
}
