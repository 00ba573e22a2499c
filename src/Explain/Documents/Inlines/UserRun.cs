namespace Explain;

/// <summary>The user's own text: data, never markup.</summary>
/// <param name="Text">The text.</param>
/// <param name="IsPhrase">Whether it is part of a sentence of the page, and has a capital where the sentence begins with it.</param>
internal sealed record UserRun(string Text, bool IsPhrase = false) : Inline;
