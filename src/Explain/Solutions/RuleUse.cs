namespace Explain;

/// <summary>Why a step holds: a rule, what fills its roles, and the claims it rests on.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Roles">Its roles, each filled.</param>
/// <param name="From">The premises and steps that the step rests on.</param>
public sealed record RuleUse(RuleId Rule, Items<Role> Roles, Items<ClaimId> From)
{
    /// <summary>The comparisons of values that the rule needs, decided again whenever the solution is evaluated again.</summary>
    public Items<Compare> When { get; init; }
}
