namespace Explain.Generators;

/// <summary>Finds local values on which neither a result nor a condition depends.</summary>
internal static class Unused
{
    public static IEnumerable<string> In(IEnumerable<LineModel> lines)
    {
        LineModel[] all = [.. lines.SelectMany(l => l.All)];
        HashSet<string> used = [.. all.Where(l => l.Gives is null).SelectMany(l => l.Uses).Select(l => l.Name)];
        foreach (LineModel line in Enumerable.Reverse(all).Where(l => l.Gives is { } given && used.Contains(given))) used.UnionWith(line.Uses.Select(l => l.Name));
        return all.Select(l => l.Gives).OfType<string>().Where(given => !used.Contains(given)).Distinct();
    }
}
