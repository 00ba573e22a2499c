namespace Explain;

/// <summary>Reads how answers are rounded: one rule, or one for each kind.</summary>
internal static class RoundNode
{
    public static Problem Read(Problem problem, FileEntry entry) => entry.Value is FileMap
        ? FileKeys.Map(problem, entry, Kind)
        : FileKeys.Each(problem, entry, (p, text) => RoundEntry.Add(p, null, text.Is, text.At));

    private static Problem Kind(Problem problem, FileText kind, FileText rule) => RoundEntry.Kinds.Contains(kind.Is)
        ? RoundEntry.Add(problem, kind.Is, rule.Is, rule.At)
        : problem.With(TreeReader.UnknownKey(kind.Is, RoundEntry.Kinds), kind.At);
}
