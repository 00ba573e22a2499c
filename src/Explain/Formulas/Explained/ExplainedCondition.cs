namespace Explain;

/// <summary>A comparison of two formulas.</summary>
/// <param name="Left">The left side.</param>
/// <param name="Relation">How they compare.</param>
/// <param name="Right">The right side.</param>
public sealed record ExplainedCondition(Expr Left, Relation Relation, Expr Right);
