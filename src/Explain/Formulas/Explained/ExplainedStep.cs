namespace Explain;

/// <summary>A line as used for certain arguments.</summary>
/// <param name="Line">The line, in symbols.</param>
/// <param name="Closed">Its formula with the arguments put in, down to the givens; null for a condition.</param>
/// <param name="Value">Its value; null for a condition.</param>
/// <param name="Inner">For a call, the steps of the other method, which fold.</param>
public sealed record ExplainedStep(ExplainedLine Line, Expr? Closed, Value? Value, Items<ExplainedStep> Inner);
