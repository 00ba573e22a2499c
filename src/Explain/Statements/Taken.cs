namespace Explain;

/// <summary>An assumption in words that no rule may use: the ground is level.</summary>
/// <param name="Words">The words.</param>
public sealed record Taken(Phrase Words) : Statement;
