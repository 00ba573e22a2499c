namespace Explain;

/// <summary>A rule as the reason; its words come from the wording files.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Roles">Its roles, and the symbol that fills each.</param>
public sealed record RuleReason(RuleId Rule, Items<RuleReasonRole> Roles) : ExplainedReason;
