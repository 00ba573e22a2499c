namespace Explain;

/// <summary>The functions a formula may use. Angles are in degrees; an inverse gives its principal value.</summary>
public enum Function
{
    /// <summary>Sine.</summary>
    Sine,

    /// <summary>Cosine.</summary>
    Cosine,

    /// <summary>Tangent.</summary>
    Tangent,

    /// <summary>The angle from −90° to 90° that has this sine.</summary>
    ArcSine,

    /// <summary>The angle from 0° to 180° that has this cosine.</summary>
    ArcCosine,

    /// <summary>The angle between −90° and 90° that has this tangent.</summary>
    ArcTangent,
}
