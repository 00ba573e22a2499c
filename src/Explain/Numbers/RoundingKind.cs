namespace Explain;

/// <summary>The ways of rounding.</summary>
public enum RoundingKind
{
    /// <summary>To a number of significant figures.</summary>
    SignificantFigures,

    /// <summary>To a number of decimal places.</summary>
    DecimalPlaces,

    /// <summary>To the nearest multiple of a step.</summary>
    Nearest,
}
