namespace Explain;

/// <summary>A role of a rule and what fills it here.</summary>
/// <param name="Name">The role's name in the rule book.</param>
/// <param name="Is">What fills it.</param>
/// <param name="IsCondition">Whether the rule applies only because of it, so that a reason must name it.</param>
public sealed record Role(string Name, RoleValue Is, bool IsCondition);
