namespace Explain;

/// <summary>A measure of the one circle of a figure: its radius or its circumference.</summary>
/// <param name="Kind">What is measured.</param>
public sealed record CircleMeasure(CircleMeasureKind Kind) : Symbol;
