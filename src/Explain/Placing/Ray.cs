namespace Explain;

/// <summary>A ray, or the whole straight line.</summary>
/// <param name="From">Where it starts.</param>
/// <param name="Along">A direction of any length.</param>
/// <param name="BothWays">Whether it goes on behind its start.</param>
internal sealed record Ray(Vector From, Vector Along, bool BothWays) : Locus;
