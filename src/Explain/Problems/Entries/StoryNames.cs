namespace Explain;

/// <summary>What may have a name in the story besides quantities: points, lines and shapes by their letters, and the circle of the figure.</summary>
internal static class StoryNames
{
    /// <summary>Reads <c>A</c>, <c>AB</c>, <c>ABC</c>, <c>triangle ABC</c>, <c>the circle</c>.</summary>
    public static bool Takes(string text) => Tokens.Read(text) is
        [{ Kind: TokenKind.Name }] or [{ Text: "triangle" or "△" or "line" }, { Kind: TokenKind.Name }] or [{ Text: "circle" }] or [{ Text: "the" }, { Text: "circle" }];
}
