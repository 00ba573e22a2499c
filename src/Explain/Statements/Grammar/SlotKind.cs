namespace Explain;

/// <summary>What a capital of a pattern stands for.</summary>
internal enum SlotKind
{
    /// <summary>A.</summary>
    Point,

    /// <summary>AB.</summary>
    Line,

    /// <summary>ABC or A…C.</summary>
    Polygon,

    /// <summary>angle ABC, its first word included.</summary>
    Corner,

    /// <summary>The O of "centre O".</summary>
    Circle,
}
