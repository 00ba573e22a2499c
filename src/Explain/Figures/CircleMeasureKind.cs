namespace Explain;

/// <summary>What can be measured of a circle.</summary>
public enum CircleMeasureKind
{
    /// <summary>Its radius.</summary>
    Radius,

    /// <summary>The length round it.</summary>
    Circumference,
}
