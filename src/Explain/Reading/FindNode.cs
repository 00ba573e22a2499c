namespace Explain;

/// <summary>Reads what is to be found: one thing, a list, or a map of letters.</summary>
internal static class FindNode
{
    public static Problem Read(Problem problem, FileEntry entry) => entry.Value is FileMap map
        ? Lettered(problem, map)
        : FileKeys.Each(problem, entry, (p, text) => FindEntry.Add(p, null, text.Is, text.At));

    private static Problem Lettered(Problem problem, FileMap map)
    {
        for (int i = 0; i < map.Of.Count; i++)
        {
            FileEntry part = map.Of[i];
            string expected = i < 26 ? ((char)('a' + i)).ToString() : "";
            if (part.Key.Is != expected) problem = problem.With(new(ErrorCodes.UnknownKey, ReadingPhrases.NotTheNextLetter(part.Key.Is), ReadingPhrases.LettersInOrder()), part.Key.At);
            problem = part.Value is FileMap
                ? problem.WithUnread(FindEntry.Key, part.Key.Is, Shapes.Wrong(part.Key.Is, part.Value, FileShape.Text | FileShape.List, null), part.Value.At)
                : FileKeys.Each(problem, part, (p, text) => FindEntry.Add(p, part.Key.Is, text.Is, text.At), FindEntry.Key);
        }

        return problem;
    }
}
