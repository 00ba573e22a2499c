namespace Explain;

/// <summary>A point.</summary>
/// <param name="Name">A capital letter, with primes where needed; cases of one point are told apart as B₁ and B₂.</param>
public sealed record Point(string Name) : Named;
