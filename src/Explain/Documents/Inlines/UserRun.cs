namespace Explain;

/// <summary>The user's own text: data, never markup.</summary>
internal sealed record UserRun(string Text) : Inline;
