namespace Explain;

/// <summary>A role of a schema: a quantity, an object, or a condition that must be met by a claim.</summary>
/// <param name="Name">The name that wordings use.</param>
/// <param name="Quantity">The quantity, when it is one.</param>
/// <param name="Named">The object, when it is one.</param>
/// <param name="Condition">The condition, when it is one.</param>
internal sealed record SchemaRole(string Name, Symbol? Quantity, Named? Named, Statement? Condition);
