namespace Explain;

/// <summary>A run of text inside a block, typed by where it comes from: each output escapes each type in its own way.</summary>
internal abstract record Inline;
