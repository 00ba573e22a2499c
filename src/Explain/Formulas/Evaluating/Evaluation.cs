namespace Explain;

/// <summary>What came of evaluating a formula.</summary>
internal abstract record Evaluation;
