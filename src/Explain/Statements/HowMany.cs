namespace Explain;

/// <summary>How many things there are such that the statements hold: two triangles; the arcs cross twice.</summary>
/// <param name="What">What is counted, in words.</param>
/// <param name="Such">What each of them satisfies.</param>
/// <param name="Count">How many there are.</param>
public sealed record HowMany(Phrase What, Items<Statement> Such, int Count) : Statement;
