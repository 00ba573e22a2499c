namespace Explain;

/// <summary>The scale of a drawing: 1 cm to 10 m, or 1 : 1000.</summary>
/// <param name="OnPaper">A length on paper; a plain number for a scale such as 1 : 1000.</param>
/// <param name="InReality">The length that it stands for; a plain number for a scale such as 1 : 1000.</param>
/// <param name="Typed">The scale as typed.</param>
public sealed record DrawingScale(Quantity OnPaper, Quantity InReality, string Typed);
