namespace Explain;

/// <summary>Why bounds are the bounds.</summary>
public abstract record BoundsProof;
