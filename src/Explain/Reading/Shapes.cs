namespace Explain;

/// <summary>Tells what stands under a key from what may stand there.</summary>
internal static class Shapes
{
    public static FileShape Of(FileNode node) => node switch { FileMap => FileShape.Map, FileList => FileShape.List, _ => FileShape.Text };

    /// <summary>An empty value is nothing, and no wrong shape.</summary>
    public static bool Fits(FileNode node, FileShape shape) => shape.HasFlag(Of(node)) || node is FileText { Is: "" };

    public static Fault Wrong(string key, FileNode found, FileShape wanted, string? example) => new(ErrorCodes.WrongShape,
        ReadingPhrases.WrongShape(key, Name(Of(found)), Name(wanted)), example is null ? null : ReadingPhrases.ForExample(example));

    private static Phrase Name(FileShape shape) => shape switch
    {
        FileShape.Text => ReadingPhrases.AText(),
        FileShape.List => ReadingPhrases.AList(),
        FileShape.Map => ReadingPhrases.AMap(),
        FileShape.Text | FileShape.List => ReadingPhrases.ATextOrAList(),
        FileShape.Text | FileShape.Map => ReadingPhrases.ATextOrAMap(),
        _ => ReadingPhrases.AnyShape(),
    };
}
