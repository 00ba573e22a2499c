namespace Explain;

/// <summary>Two polygons are similar or congruent, corners in corresponding order.</summary>
/// <param name="Congruent">Congruent, or only similar.</param>
/// <param name="First">The first shape.</param>
/// <param name="Second">The second shape.</param>
public sealed record Alike(bool Congruent, Polygon First, Polygon Second) : Statement;
