namespace Explain;

/// <summary>A given whose value is a range, in formulas.</summary>
/// <param name="Of">The given.</param>
internal sealed record Measurement(ClaimId Of) : Symbol;
