using System.Text;

namespace Explain.Tests.Published;

/// <summary>A value that a book, a standard or a table prints: what is given and asked, the answer as printed, how far it may be out, and where it stands.</summary>
internal sealed record PublishedRow(string Id, string Givens, string Find, string Expected, string Tolerance, string Source, string Seen)
{
    /// <summary>The value computed afresh, where the file has it.</summary>
    public string Recomputed { get; init; } = "";

    /// <summary>Whether what is printed agrees with it.</summary>
    public bool IsRight { get; init; } = true;

    /// <summary>All rows of a file of published values.</summary>
    public static IReadOnlyList<PublishedRow> All(string file)
    {
        using Stream stream = typeof(PublishedRow).Assembly.GetManifestResourceStream($"published/{file}.tsv")!;
        using StreamReader reader = new(stream, Encoding.UTF8);
        string[] lines = reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        return [.. lines.Skip(1).Select(l => l.TrimEnd('\r').Split('\t')).Select(Of)];
    }

    private static PublishedRow Of(string[] f) => new(f[0], f[1], f[2], f[3], f[4], f[5], f[6])
    {
        Recomputed = f.ElementAtOrDefault(7) ?? "", IsRight = f.ElementAtOrDefault(8) is null or "yes",
    };
}
