namespace Explain;

/// <summary>All values between the bounds were examined by enclosures over smaller and smaller boxes.</summary>
/// <param name="Boxes">How many boxes were examined.</param>
/// <param name="LowerAt">Where the least value is.</param>
/// <param name="UpperAt">Where the greatest value is.</param>
public sealed record Subdivided(int Boxes, Items<Binding> LowerAt, Items<Binding> UpperAt) : BoundsProof;
