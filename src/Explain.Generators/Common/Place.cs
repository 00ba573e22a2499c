using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Text;

namespace Explain.Generators;

/// <summary>A place in a source or wording file as plain numbers, so that a model may hold it.</summary>
internal sealed record Place(string Path, int Start, int Length, int Line, int Column, int EndLine, int EndColumn)
{
    public static Place Of(Location location)
    {
        LinePositionSpan lines = location.GetLineSpan().Span;
        return new(location.SourceTree?.FilePath ?? "", location.SourceSpan.Start, location.SourceSpan.Length,
            lines.Start.Line, lines.Start.Character, lines.End.Line, lines.End.Character);
    }

    public static Place Of(SyntaxNode node) => Of(node.GetLocation());

    public static Place Of(SyntaxToken token) => Of(token.GetLocation());

    public Location ToLocation() => Location.Create(Path, new TextSpan(Start, Length),
        new LinePositionSpan(new LinePosition(Line, Column), new LinePosition(EndLine, EndColumn)));

    /// <summary>The place as people name it.</summary>
    public override string ToString() => FormattableString.Invariant($"{System.IO.Path.GetFileName(Path)}({Line + 1},{Column + 1})");
}
