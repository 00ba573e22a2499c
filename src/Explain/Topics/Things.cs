using System.Collections.Frozen;

namespace Explain;

/// <summary>Which cautions the names of a problem call for: data, never read from the text of its story.</summary>
internal static class Things
{
    private static readonly FrozenSet<string> Built = Read("building"), Outdoors = Read("outdoors");

    public static Items<Phrase> Cautions(Problem problem) =>
    [
        .. Any(problem, Outdoors) ? [TopicPhrases.Outdoors(), TopicPhrases.Permission()] : (Phrase[])[],
        .. Any(problem, Built) ? [TopicPhrases.Strength(), TopicPhrases.LocalRules()] : (Phrase[])[],
    ];

    /// <summary>Whether some name ends with one of the things: the steel beam, the props.</summary>
    private static bool Any(Problem problem, FrozenSet<string> things) => problem.Names.Any(n => Endings(n.Is).Any(e => things.Contains(e) || (e.EndsWith('s') && things.Contains(e[..^1]))));

    private static IEnumerable<string> Endings(string name)
    {
        string[] words = name.ToLowerInvariant().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        return Enumerable.Range(0, words.Length).Select(i => string.Join(' ', words[i..]));
    }

    private static FrozenSet<string> Read(string kind) => Resources.Read($"things/{kind}.txt").Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
        .Where(l => l[0] != '#').ToFrozenSet(StringComparer.Ordinal);
}
