namespace Explain;

/// <summary>What the problems of a topic are made of, in words.</summary>
/// <param name="Figure">What the figure must have.</param>
/// <param name="Given">What may be given.</param>
/// <param name="Find">What may be asked.</param>
public sealed record TopicWords(Phrase Figure, Phrase Given, Phrase Find);
