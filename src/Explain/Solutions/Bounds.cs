namespace Explain;

/// <summary>The least and the greatest value over all values of the measurements between their bounds.</summary>
/// <param name="Lower">The least value.</param>
/// <param name="Upper">The greatest value.</param>
/// <param name="Proof">Why there is none beyond.</param>
public sealed record Bounds(Value Lower, Value Upper, BoundsProof Proof);
