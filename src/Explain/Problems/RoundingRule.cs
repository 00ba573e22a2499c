namespace Explain;

/// <summary>How answers of one kind are rounded.</summary>
/// <param name="Of">lengths, areas, angles or ratios; null for all answers.</param>
/// <param name="Rule">The rule.</param>
public sealed record RoundingRule(string? Of, Rounding Rule);
