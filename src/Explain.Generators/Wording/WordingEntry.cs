namespace Explain.Generators;

/// <summary>A line of a wording file with the file it stands in.</summary>
internal sealed class WordingEntry(WordingText file, WordingLine line)
{
    public string English { get; } = file.English;

    public WordingLine Line { get; } = line;

    public IReadOnlyList<WordingPiece> Pieces { get; } = WordingPiece.Parse(line.Text)!;

    public Place At { get; } = Place(file, line.Row, line.Start, line.Length);

    public static Place Place(WordingText file, int row, int start, int length) => new(file.Path, start, length, row, 0, row, length);

    public bool Places(string slot) => Pieces.Any(p => p.Places == slot);
}
