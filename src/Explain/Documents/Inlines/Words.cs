namespace Explain;

/// <summary>Words of a wording file.</summary>
internal sealed record Words(string Text) : Inline;
