namespace Explain;

/// <summary>A value: exact, or enclosed without a decimal of fifteen places or fewer inside.</summary>
internal sealed record Evaluated(Value Value) : Evaluation;
