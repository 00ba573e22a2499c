namespace Explain.Generators;

/// <summary>A relation's law: two sides, and what each of its letters stands for.</summary>
internal sealed record Law(Node Left, Node Right, EquatableArray<RoleModel> Quantities);
