namespace Explain;

/// <summary>The sine, cosine or tangent of an angle, as a quantity that a step may find: sin ABC.</summary>
/// <param name="Function">Sine, cosine or tangent.</param>
/// <param name="Of">The angle.</param>
public sealed record Ratio(Function Function, Angle Of) : Symbol;
