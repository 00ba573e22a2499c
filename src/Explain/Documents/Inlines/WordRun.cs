namespace Explain;

/// <summary>Words of a wording file.</summary>
internal sealed record WordRun(string Text) : Inline;
