namespace Explain;

/// <summary>A role of a rule: its name and what may fill it, as a pattern.</summary>
/// <param name="Name">The name that wordings use.</param>
/// <param name="Pattern">In the grammar of problem files, over the rule's pattern points.</param>
/// <param name="IsCondition">Whether every wording must mention it.</param>
public sealed record RolePattern(string Name, string Pattern, bool IsCondition);
