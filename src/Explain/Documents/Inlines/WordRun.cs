namespace Explain;

/// <summary>Words.</summary>
/// <param name="Text">The words.</param>
/// <param name="From">The id of the wording that they stand in; null for what the printer puts between.</param>
internal sealed record WordRun(string Text, string? From = null) : Inline;
