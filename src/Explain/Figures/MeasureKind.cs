namespace Explain;

/// <summary>What can be measured of a shape.</summary>
public enum MeasureKind
{
    /// <summary>Its area.</summary>
    Area,

    /// <summary>The length round it.</summary>
    Perimeter,

    /// <summary>Half the length round it.</summary>
    HalfPerimeter,

    /// <summary>The radius of the circle inside it that touches every side.</summary>
    InscribedRadius,

    /// <summary>The radius of the circle through its corners.</summary>
    CircumscribedRadius,

    /// <summary>The diameter of the circle through its corners.</summary>
    CircumscribedDiameter,
}
