namespace Explain;

/// <summary>The user's wording of a lettered part.</summary>
/// <param name="Letter">The letter.</param>
/// <param name="Words">The user's words.</param>
public sealed record PartWording(string Letter, string Words);
