namespace Explain;

/// <summary>A list or a map that is being read.</summary>
internal sealed class OpenNode(bool isMap, Position at)
{
    public bool IsMap { get; } = isMap;

    public Position At { get; } = at;

    public List<FileNode> Items { get; } = [];

    public List<FileEntry> Entries { get; } = [];

    /// <summary>The keys so far, each with its line.</summary>
    public Dictionary<string, int> Keys { get; } = new(StringComparer.Ordinal);

    /// <summary>The key whose value comes next.</summary>
    public FileText? Key { get; set; }

    /// <summary>Whether the entry that is being read is left out.</summary>
    public bool LeavesOut { get; set; }

    /// <summary>Whether it stands where a key belongs, so that it is nobody's value.</summary>
    public bool IsValueOfNothing { get; init; }

    /// <summary>Whether it has as many entries as it may.</summary>
    public bool IsFull { get; set; }
}
