namespace Explain;

/// <summary>Where a point may be.</summary>
internal abstract record Locus;
