namespace Explain;

/// <summary>What kind of quantity a unit measures.</summary>
public enum Dimension
{
    /// <summary>A plain number or a power of length.</summary>
    Length,

    /// <summary>An angle.</summary>
    Angle,
}
