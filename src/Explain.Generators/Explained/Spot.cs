using Microsoft.CodeAnalysis;

namespace Explain.Generators;

/// <summary>Where a line stands, and the comment that is its reason.</summary>
/// <param name="At">The code.</param>
/// <param name="Comment">The comment; null for none.</param>
/// <param name="IsQuiet">Whether another line on the same line of code has the comment for both.</param>
internal readonly record struct Spot(SyntaxNode At, SyntaxTrivia? Comment, bool IsQuiet = false)
{
    public static Spot Of(SyntaxNode node) => new(node, Comments.Of(node));
}
