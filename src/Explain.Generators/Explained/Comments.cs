using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Explain.Generators;

/// <summary>Finds the comment that ends a line. Only trivia count, so two strokes inside a string are none.</summary>
internal static class Comments
{
    /// <summary>The comment after a token on its line.</summary>
    public static SyntaxTrivia? After(SyntaxToken token)
    {
        SyntaxTrivia comment = token.TrailingTrivia.FirstOrDefault(t => t.IsKind(SyntaxKind.SingleLineCommentTrivia));
        return comment == default ? null : comment;
    }

    /// <summary>The comment after a node, or after the comma or semicolon that follows it.</summary>
    public static SyntaxTrivia? AtEnd(SyntaxNode node)
    {
        SyntaxToken last = node.GetLastToken(), next = last.GetNextToken();
        return After(last) ?? (next.IsKind(SyntaxKind.CommaToken) || next.IsKind(SyntaxKind.SemicolonToken) ? After(next) : null);
    }

    /// <summary>The comment at the end of a node, or else the last one inside it.</summary>
    public static SyntaxTrivia? Of(SyntaxNode node)
    {
        SyntaxToken last = node.GetLastToken();
        return AtEnd(node) ?? node.DescendantTokens().Where(t => t != last).Select(After).LastOrDefault(c => c is not null);
    }

    /// <summary>What a comment says, without its strokes.</summary>
    public static string Text(SyntaxTrivia comment) => comment.ToString().Trim().TrimStart('/').Trim();

    /// <summary>Whether two nodes end on one line, so that one comment is for both.</summary>
    public static bool OnOneLine(SyntaxNode first, SyntaxNode second) => EndLine(first) == EndLine(second);

    private static int EndLine(SyntaxNode node) => node.GetLocation().GetLineSpan().EndLinePosition.Line;
}
