namespace Explain.Generators;

/// <summary>Checks the wording files against what is declared.</summary>
/// <param name="wanted">Every id that has words.</param>
/// <param name="files">The files, in any order.</param>
/// <param name="whole">Whether the files hold words for nothing else than what is declared here.</param>
internal sealed class WordingChecks(IReadOnlyList<Wanted> wanted, IEnumerable<WordingText> files, bool whole)
{
    private const string Complete = "uk";
    private readonly List<Finding> findings = [];
    private readonly HashSet<string> unread = [];
    private readonly Dictionary<string, Wanted> byId = wanted.GroupBy(w => w.Id).ToDictionary(g => g.Key, g => g.First());
    private readonly WordingText[] texts = [.. files.OrderBy(f => f.Name, StringComparer.Ordinal)];

    public EquatableArray<Finding> Run()
    {
        Twice();
        if (texts.Length == 0) return [.. findings];
        WordingEntry[] entries = [.. texts.SelectMany(Read)];
        OtherEnglish words = OtherEnglish.Of(entries);
        WordingEntry[] said = [.. entries.Where(e => e.English != OtherEnglish.FileName)];
        foreach (IGrouping<(string, string), WordingEntry> group in said.GroupBy(e => (e.English, e.Line.Id)).Where(g => g.Count() > 1))
            foreach (WordingEntry again in group.Skip(1)) Report(Descriptors.WordedTwice, again.At, again.Line.Id, group.First().At.ToString());
        foreach (WordingEntry entry in said) Check(entry);
        HashSet<string> worded = [.. said.Where(e => e.English == Complete).Select(e => e.Line.Id), .. unread];
        foreach (Wanted missing in byId.Values.Where(w => !w.IsOptional && !worded.Contains(w.Id))) Missing(missing);
        findings.AddRange(words.Check(said));
        return [.. findings];
    }

    private void Twice()
    {
        foreach (IGrouping<string, Wanted> group in wanted.GroupBy(w => w.Id).Where(g => g.Count() > 1))
            foreach (Wanted again in group.Skip(1)) Report(Descriptors.IdTwice, again.At, again.Id, group.First().At.ToString());
    }

    private IEnumerable<WordingEntry> Read(WordingText text)
    {
        WordingFile file = WordingFile.Read(text.Text);
        if (text.English is not (Complete or "us" or OtherEnglish.FileName))
            Report(Descriptors.BadLine, new(text.Path, 0, 0, 0, 0, 0, 0), $"{text.Name}: the name must begin with its English, uk or us");
        unread.UnionWith(file.Faults.Select(f => f.Id));
        foreach (WordingFault fault in file.Faults) Report(Descriptors.BadLine, WordingEntry.Place(text, fault.Row, fault.Start, fault.Length), Why(fault.Kind));
        return file.Lines.Select(line => new WordingEntry(text, line));
    }

    private void Check(WordingEntry entry)
    {
        string id = entry.Line.Id;
        if (!byId.TryGetValue(id, out Wanted? of))
        {
            if (whole) Report(Descriptors.UnknownPhrase, entry.At, id, Nearest.Offer(id, byId.Keys));
            return;
        }

        foreach (WordingPiece piece in entry.Pieces) Check(entry, of, piece);
        foreach (Slot condition in of.Slots.Where(s => s.IsCondition && !entry.Places(s.Name))) Report(Descriptors.ConditionMissing, entry.At, id, condition.Name);
        if (Telling(entry, of) is { } told) Report(Descriptors.TellingLook, entry.At, id, told);
    }

    private void Check(WordingEntry entry, Wanted of, WordingPiece piece)
    {
        if (piece.Places is not { } name) return;
        string supplied = of.Slots.Count == 0 ? "it supplies nothing" : "supplied are " + string.Join(", ", of.Slots.Select(s => s.Name));
        if (of.Slots.FirstOrDefault(s => s.Name == name) is not { } slot) Report(Descriptors.UnknownSlot, entry.At, of.Id, name, supplied);
        else if (piece is WordingChoice && !slot.Counts) Report(Descriptors.UnknownSlot, entry.At, of.Id, name + "|…", name + " is no count, so it cannot choose singular or plural");
        else if (piece is WordingSlot { How: { } how } && !slot.IsObject) Report(Descriptors.UnknownSlot, entry.At, of.Id, name + "|" + how, name + " is no object of the figure, so the story has no name for it");
    }

    /// <summary>What an early hint gives away, if it does.</summary>
    private static string? Telling(WordingEntry entry, Wanted of) =>
        !of.Id.EndsWith(".look", StringComparison.Ordinal) ? null
        : entry.Pieces.OfType<WordingWords>().Any(w => w.Text.Any(char.IsDigit)) ? "a digit"
        : of.Slots.FirstOrDefault(s => s.Kind is SlotKind.Formula or SlotKind.Value && entry.Places(s.Name)) is { } value ? "the value {" + value.Name + "}"
        : null;

    private void Missing(Wanted of)
    {
        string file = texts.FirstOrDefault(t => t.English == Complete)?.Name ?? Complete + ".wording.yaml";
        string slots = string.Concat(of.Slots.Where(s => s.Name != "steps").Select(s => " {" + s.Name + "}"));
        Report(Descriptors.NoWording, of.At, of.Noun, of.Id, file, of.Id + ": \"…" + slots + "\"");
    }

    private void Report(Microsoft.CodeAnalysis.DiagnosticDescriptor descriptor, Place at, params string[] args) => findings.Add(Finding.Of(descriptor, at, args));

    private static string Why(WordingFaultKind kind) => kind switch
    {
        WordingFaultKind.NotAPair => "write the line as 'id: text'",
        WordingFaultKind.BadId => Ids.Form,
        WordingFaultKind.BadQuotes => "put the text in double quotes, with \\\" and \\\\ inside, when it begins with a sign or holds ': ' or ' #'",
        _ => "write placeholders as {name}, {name|thing}, {name|line}, {name|1}, {name|2} or {name|one=…|other=…}, and braces themselves as {{ and }}",
    };
}
