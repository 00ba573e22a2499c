namespace Explain;

/// <summary>The table of keys.</summary>
internal static class FileKeys
{
    public static Items<FileKey> All { get; } =
    [
        new("topic", FileShape.Text, "topic: solve a triangle", (p, e) => Said(e) is { } text ? p with { Topic = new(text) } : p),
        new(FigureEntry.Key, FileShape.Text | FileShape.List, "figure: ABC is a triangle", (p, e) => Each(p, e, (q, text) => FigureEntry.Add(q, text.Is, text.At))),
        new(GivenEntry.Key, FileShape.Map, "given: {AB: 9.5 cm}", GivenMap.Read),
        new(FindEntry.Key, FileShape.Text | FileShape.List | FileShape.Map, "find: AB", FindNode.Read),
        new("title", FileShape.Text, "title: A prop on a rail", (p, e) => p with { Title = Said(e) }),
        new("question", FileShape.Text, "question: Find AB.", (p, e) => p with { Question = Said(e) }),
        new("parts", FileShape.Map, "parts: {a: Calculate PT.}", (p, e) => Map(p, e, (q, letter, text) => PartEntry.AddWording(q, letter.Is, text.Is))),
        new("names", FileShape.Map, "names: {AB: the width of the ravine}", (p, e) => Map(p, e, NameEntry)),
        new("assume", FileShape.Text | FileShape.List, "assume: the ground is level", (p, e) => Each(p, e, (q, text) => q with { Assume = q.Assume.With(text.Is) })),
        new("method", FileShape.Text | FileShape.List, "method: sine rule", (p, e) => Each(p, e, (q, text) => PartEntry.AddMethod(q, text.Is, text.At))),
        new("scale", FileShape.Text, "scale: 1 cm to 10 m", (p, e) => Each(p, e, (q, text) => ScaleEntry.Add(q, text.Is, text.At))),
        new("tolerance", FileShape.Text, "tolerance: 1 mm and 1°", (p, e) => Each(p, e, (q, text) => MarginEntry.AddTolerance(q, text.Is, text.At))),
        new("accuracy", FileShape.Text, "accuracy: nearest 0.1 m", (p, e) => Each(p, e, (q, text) => MarginEntry.AddAccuracy(q, text.Is, text.At))),
        new("round", FileShape.Text | FileShape.Map, "round: 3 significant figures", RoundNode.Read),
        new("marks", FileShape.Map, "marks: {a: 4, b: 2}", (p, e) => Map(p, e, (q, letter, text) => PartEntry.AddMarks(q, letter.Is, text.Is, text.At))),
    ];

    /// <summary>Adds each text of a text or a list, under the key of the entry or the one it belongs to.</summary>
    public static Problem Each(Problem problem, FileEntry entry, Func<Problem, FileText, Problem> add, string? under = null)
    {
        foreach (FileNode node in entry.Value is FileList list ? list.Of : [entry.Value])
        {
            if (node is not FileText text) problem = problem.WithUnread(under ?? entry.Key.Is, "", Shapes.Wrong(entry.Key.Is, node, FileShape.Text, null), node.At);
            else if (text.Is.Length > 0) problem = add(problem, text);
        }

        return problem;
    }

    /// <summary>Adds each entry of a map of texts.</summary>
    public static Problem Map(Problem problem, FileEntry entry, Func<Problem, FileText, FileText, Problem> add)
    {
        if (entry.Value is not FileMap map) return problem;
        foreach (FileEntry one in map.Of)
            problem = one.Value is FileText text ? add(problem, one.Key, text) : problem.With(Shapes.Wrong(one.Key.Is, one.Value, FileShape.Text, null), one.Value.At);
        return problem;
    }

    private static Problem NameEntry(Problem problem, FileText of, FileText words)
    {
        bool isName = StoryNames.Takes(of.Is) || QuantityGrammar.Read(of.Is) is not null || ExtraEntry.Takes(of.Is);
        return isName ? problem with { Names = problem.Names.With(new(of.Is, words.Is) { At = of.At }) } : problem.With(NearestStatement.QuantityFault(of.Is), of.At);
    }

    private static string? Said(FileEntry entry) => entry.Value is FileText { Is: { Length: > 0 } text } ? text : null;
}
