namespace Explain;

/// <summary>One part of a formula that moves with a measurement.</summary>
/// <param name="Says">The part, the measurement, and whether the part becomes larger.</param>
/// <param name="Kind">Why it moves that way.</param>
public sealed record Link(Varies Says, LinkKind Kind);
