namespace Explain;

/// <summary>A circle.</summary>
/// <param name="Centre">Its centre.</param>
/// <param name="Radius">Its radius.</param>
internal sealed record Ring(Vector Centre, Enclosure Radius) : Locus;
