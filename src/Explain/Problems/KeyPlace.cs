namespace Explain;

/// <summary>Where a key of a problem file stands.</summary>
/// <param name="Key">The key.</param>
/// <param name="At">Its place.</param>
public sealed record KeyPlace(string Key, Position At);
