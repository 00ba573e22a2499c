namespace Explain;

/// <summary>How a quantity changes with one measurement, all over the box.</summary>
internal sealed record Trend(Symbol With, Direction Direction);
