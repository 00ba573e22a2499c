namespace Explain;

/// <summary>A sign or a digit could not be proved at any precision.</summary>
internal sealed record Undecided : Evaluation;
