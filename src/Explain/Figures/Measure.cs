namespace Explain;

/// <summary>A measure of a shape: the area of ABC, the perimeter of ABCD.</summary>
/// <param name="Kind">What is measured.</param>
/// <param name="Of">The shape.</param>
public sealed record Measure(MeasureKind Kind, Polygon Of) : Symbol;
