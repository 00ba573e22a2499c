namespace Explain;

/// <summary>Where a premise comes from.</summary>
public enum Source
{
    /// <summary>Given in the problem.</summary>
    Given,

    /// <summary>Read from the figure: order, side, turn, the triangle of three points, the right angle where lines stated to be perpendicular cross; no other equality.</summary>
    Figure,

    /// <summary>Assumed, and printed as an assumption.</summary>
    Assumed,
}
