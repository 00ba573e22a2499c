namespace Explain;

/// <summary>Reads a problem from the tree of its file, key by key in the order of the table.</summary>
internal static class TreeReader
{
    public static Problem Read(FileNode root, Problem empty)
    {
        if (root is not FileMap { Of.Count: > 0 } map)
        {
            Fault fault = root is FileMap ? new(ErrorCodes.UnreadableFile, ReadingPhrases.EmptyFile(), ReadingPhrases.BeginWithATopic())
                : new(ErrorCodes.WrongShape, ReadingPhrases.RootIsNoMap(), ReadingPhrases.BeginWithATopic());
            return empty.With(fault, root.At) with { Unread = [new(FigureEntry.Key, ""), new(FindEntry.Key, "")] };
        }

        Problem problem = empty with { Keys = [.. map.Of.Select(e => new KeyPlace(e.Key.Is, e.Key.At))] };
        foreach (FileEntry entry in map.Of.Where(e => Key(e) is null)) problem = Unknown(problem, map, entry);
        foreach (FileKey key in FileKeys.All)
            if (map.Of.FirstOrDefault(e => e.Key.Is == key.Name) is { } entry) problem = Read(problem, key, entry);
        return Letters(Letters(problem, map, "parts"), map, "marks");
    }

    /// <summary>A key that does not exist; it hides that the key it is nearest to is missing.</summary>
    public static Fault UnknownKey(string key, Items<string> keys)
    {
        Phrase message = Spelling.Nearest(key, keys) is { } near ? ReadingPhrases.UnknownKeyNear(key, near) : ReadingPhrases.UnknownKey(key);
        return new(ErrorCodes.UnknownKey, message, ReadingPhrases.Keys(string.Join(", ", keys)));
    }

    private static FileKey? Key(FileEntry entry) => FileKeys.All.FirstOrDefault(k => k.Name == entry.Key.Is);

    private static Problem Read(Problem problem, FileKey key, FileEntry entry) => Shapes.Fits(entry.Value, key.Shape)
        ? key.Read(problem, entry)
        : problem.WithUnread(key.Name, "", Shapes.Wrong(key.Name, entry.Value, key.Shape, key.Example), entry.Value.At);

    private static Problem Unknown(Problem problem, FileMap map, FileEntry entry)
    {
        Items<string> names = [.. FileKeys.All.Select(k => k.Name)];
        Fault fault = UnknownKey(entry.Key.Is, names);
        string? near = Spelling.Nearest(entry.Key.Is, names);
        return near is null || map.Of.Any(e => e.Key.Is == near) ? problem.With(fault, entry.Key.At) : problem.WithUnread(near, "", fault, entry.Key.At);
    }

    /// <summary>Letters of parts and marks must be letters of find.</summary>
    private static Problem Letters(Problem problem, FileMap map, string key)
    {
        if (problem.Unread.Any(u => u.Key == FindEntry.Key) || map.Of.FirstOrDefault(e => e.Key.Is == key)?.Value is not FileMap letters) return problem;
        foreach (FileText letter in letters.Of.Select(e => e.Key).Where(l => problem.Find.All(g => g.Letter != l.Is)))
            problem = problem.With(new(ErrorCodes.UnknownKey, ReadingPhrases.NoSuchPart(letter.Is), ReadingPhrases.LettersOfFind()), letter.At);
        return problem;
    }
}
