namespace Explain.Generators;

/// <summary>A reason: words as they stand, or a rule with what fills its roles.</summary>
/// <param name="Text">The words, or the rule's id.</param>
/// <param name="IsRule">Whether it names a rule.</param>
/// <param name="Roles">The rule's roles, and the symbol that fills each.</param>
internal sealed record ReasonModel(string Text, bool IsRule, EquatableArray<RoleModel> Roles);
