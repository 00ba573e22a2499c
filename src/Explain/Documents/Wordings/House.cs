using System.Collections.Frozen;

namespace Explain;

/// <summary>
/// A house's own words and layout. A wording file takes the place of single lines, <c>uk.….wording.yaml</c> in UK English,
/// <c>us.….wording.yaml</c> in US English, any other name in both. A template takes the place of the block's that bears its name:
/// <c>latex/step.scriban</c> in one output, <c>step.scriban</c> in all. Immutable.
/// </summary>
public sealed class House
{
    private const string TemplateEnding = ".scriban", Again = ".again";

    private readonly Items<KeyValuePair<string, string>> wordings;
    private readonly FrozenDictionary<string, TemplateSet> templates;

    private House(Items<KeyValuePair<string, string>> files)
    {
        wordings = [.. files.Where(f => !f.Key.EndsWith(TemplateEnding, StringComparison.Ordinal))];
        templates = TemplateSet.Folders.ToFrozenDictionary(o => o, o => TemplateSet.For(o).With(files
            .Where(f => f.Key.EndsWith(TemplateEnding, StringComparison.Ordinal) && IsFor(f.Key, o))
            .Select(f => KeyValuePair.Create(f.Key.Split('/')[^1][..^TemplateEnding.Length], f.Value))));
    }

    /// <summary>No house: the library's own words and layout.</summary>
    public static House None { get; } = new([]);

    /// <summary>A house from its files: names relative to its folder, with forward slashes, and texts.</summary>
    /// <param name="files">The files.</param>
    /// <exception cref="TemplateException">A template cannot be read, or no block bears its name.</exception>
    public static House Of(params IEnumerable<KeyValuePair<string, string>> files) => new([.. files]);

    private static bool IsFor(string path, string output) => path.Split('/') is [_] || path.Split('/') is [.., var folder, _] && folder == output;

    internal static IEnumerable<WordingLine> Lines(string text) => WordingFile.Read(text) is { Faults: [] } file ? file.Lines
        : throw new WordingException(text.Split('\n')[WordingFile.Read(text).Faults[0].Row].Trim(), null);

    internal TemplateSet Templates(string output) => templates[output];

    /// <summary>The words with the house's in place of the library's.</summary>
    /// <exception cref="WordingException">No phrase has such an id, or its words place what it does not have, or leave a condition out.</exception>
    internal WordingTable Words(WordingTable table, English english)
    {
        string own = english == English.UnitedKingdom ? "uk" : "us", other = english == English.UnitedKingdom ? "us" : "uk";
        WordingLine[] lines = [.. wordings.Where(w => w.Key.Split('/')[^1].Split('.')[0] != other).OrderBy(w => w.Key.Split('/')[^1].Split('.')[0] == own).SelectMany(w => Lines(w.Value))];
        foreach (WordingLine line in lines) Check(line, table);
        return table.With(lines);
    }

    /// <summary>A rule supplies all its roles and must be told with every condition; a phrase supplies what the standard wording places.</summary>
    private static void Check(WordingLine line, WordingTable table)
    {
        if (table.Find(line.Id) is not { } standard) throw new WordingException(line.Id, null, Spelling.Nearest(line.Id, table.Ids));
        HouseWords.Check(line, standard);
        string rule = line.Id.EndsWith(Again, StringComparison.Ordinal) ? line.Id[..^Again.Length] : line.Id;
        Items<RolePattern> roles = RuleBook.Standard.Rules.FirstOrDefault(r => r.Id.Name == rule)?.Roles ?? [];
        string[] supplied = [.. standard.Select(p => p.Places).OfType<string>(), .. roles.Select(r => r.Name), "steps"];
        string[] placed = [.. WordingPiece.Parse(line.Text)!.Select(p => p.Places).OfType<string>()];
        if (placed.FirstOrDefault(p => !supplied.Contains(p)) is { } unknown) throw new WordingException(line.Id, unknown, Spelling.Nearest(unknown, supplied));
        if (roles.FirstOrDefault(r => r.IsCondition && !placed.Contains(r.Name)) is { } condition) throw new WordingException(line.Id, condition.Name);
    }
}
