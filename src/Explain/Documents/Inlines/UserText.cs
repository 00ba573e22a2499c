namespace Explain;

/// <summary>The user's own text: data, never markup.</summary>
internal sealed record UserText(string Text) : Inline;
