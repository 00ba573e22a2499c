namespace Explain;

/// <summary>An entry that could not be read.</summary>
/// <param name="Key">The key that it stands under.</param>
/// <param name="Text">What was typed.</param>
internal sealed record UnreadEntry(string Key, string Text);
