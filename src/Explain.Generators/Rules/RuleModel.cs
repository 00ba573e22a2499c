namespace Explain.Generators;

/// <summary>A declared rule.</summary>
/// <param name="In">The type that declares it.</param>
/// <param name="Id">Its id, also of its wording.</param>
/// <param name="When">What must hold.</param>
/// <param name="Then">What then holds; null for a relation.</param>
/// <param name="Left">The left side of a relation's law.</param>
/// <param name="Right">The right side of a relation's law.</param>
/// <param name="Quantities">What the letters of the law stand for.</param>
/// <param name="Roles">All its roles, quantities and named conditions included.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Marks">How many marks it gets by default.</param>
internal sealed record RuleModel(TypeModel In, string Id, EquatableArray<string> When, string? Then, Node? Left, Node? Right,
    EquatableArray<RoleModel> Quantities, EquatableArray<RoleModel> Roles, string Source, int Marks);
