namespace Explain;

/// <summary>Reads the map of givens.</summary>
internal static class GivenMap
{
    public static Problem Read(Problem problem, FileEntry entry) => entry.Value is FileMap map ? map.Of.Aggregate(problem, Add) : problem;

    private static Problem Add(Problem problem, FileEntry given) => given.Value switch
    {
        FileText text => GivenEntry.Add(problem, given.Key.Is, text.Is, given.Key.At, text.At),
        FileList when given.Key.Is == ExtraEntry.Shares => FileKeys.Each(problem, given, (p, text) => GivenEntry.Add(p, given.Key.Is, text.Is, given.Key.At, text.At)),
        _ => problem.WithUnread(GivenEntry.Key, given.Key.Is, Shapes.Wrong(given.Key.Is, given.Value, FileShape.Text, null), given.Value.At),
    };
}
