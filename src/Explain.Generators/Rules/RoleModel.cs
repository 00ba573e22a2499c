namespace Explain.Generators;

/// <summary>A role of a rule: its name, and what may fill it.</summary>
internal sealed record RoleModel(string Name, string Pattern, bool IsCondition);
