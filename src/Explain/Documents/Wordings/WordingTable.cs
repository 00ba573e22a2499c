using System.Collections.Frozen;

namespace Explain;

/// <summary>The words of every phrase in one English, read once and never changed.</summary>
internal sealed class WordingTable
{
    private const string Folder = "wording/";
    private static readonly FrozenDictionary<English, WordingTable> Standard = new Dictionary<English, WordingTable>
    {
        [English.UnitedKingdom] = new(Lines("uk")),
        [English.UnitedStates] = new(Lines("uk").Concat(Lines("us"))),
    }.ToFrozenDictionary();

    private readonly FrozenDictionary<string, Items<WordingPiece>> words;

    private WordingTable(IEnumerable<WordingLine> lines)
    {
        Dictionary<string, Items<WordingPiece>> all = new(StringComparer.Ordinal);
        foreach (WordingLine line in lines) all[line.Id] = [.. WordingPiece.Parse(line.Text)!];
        words = all.ToFrozenDictionary(StringComparer.Ordinal);
    }

    private WordingTable(IEnumerable<KeyValuePair<string, Items<WordingPiece>>> words) => this.words = words.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The library's own words.</summary>
    public static WordingTable For(English english) => Standard[english];

    /// <summary>Every id that has words.</summary>
    public IEnumerable<string> Ids => words.Keys;

    /// <summary>The pieces of a wording; null where the id has no words.</summary>
    public Items<WordingPiece>? Find(string id) => words.TryGetValue(id, out Items<WordingPiece> pieces) ? pieces : null;

    /// <summary>The table with some wordings added or exchanged.</summary>
    public WordingTable With(IEnumerable<WordingLine> lines)
    {
        Dictionary<string, Items<WordingPiece>> all = new(words, StringComparer.Ordinal);
        foreach (WordingLine line in lines) all[line.Id] = [.. WordingPiece.Parse(line.Text)!];
        return new(all);
    }

    private static IEnumerable<WordingLine> Lines(string english) => Resources.Names(Folder)
        .Where(n => n[Folder.Length..].Split('.')[0] == english)
        .SelectMany(n => WordingFile.Read(Resources.Read(n)).Lines);
}
