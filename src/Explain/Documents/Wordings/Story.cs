namespace Explain;

/// <summary>What the story of a problem calls the sides and lines of its figure.</summary>
internal sealed class Story(Problem? problem)
{
    /// <summary>No story: nothing has a name but its letters.</summary>
    public static readonly Story None = new(problem: null);

    /// <summary>The prop; null where the story has no name for the side between two points.</summary>
    public string? Thing(Point from, Point to) => Named(pair => pair.SetEquals([from, to]));

    /// <summary>
    /// The rail; null where the story has no name for the line. The name of the segment itself is none: it may be that of a
    /// distance, such as the width of a ravine.
    /// </summary>
    public string? Line(Line line)
    {
        HashSet<Point> on = [line.From, line.To, .. Statements.Where(s => IsOn(s, line)).SelectMany(Mentions.Points)];
        return Named(pair => pair.IsSubsetOf(on) && !pair.SetEquals([line.From, line.To]));
    }

    private IEnumerable<Statement> Statements => problem is null ? [] : problem.Figure.Select(f => f.Says);

    private string? Named(Func<HashSet<Point>, bool> fits) => problem?.Names
        .FirstOrDefault(n => PointNames.Distinct(n.Of) is { Count: 2 } pair && fits([.. pair]))?.Is;

    private static bool IsOn(Statement statement, Line line) => statement is Place { Kind: PlaceKind.InLine or PlaceKind.Between or PlaceKind.OnProduced } place
        && Mentions.Points(place).ToHashSet().IsSupersetOf([line.From, line.To]);
}
