namespace Explain;

/// <summary>Objects of the figure that fill a role.</summary>
/// <param name="Are">The objects.</param>
public sealed record Objects(Items<Named> Are) : RoleValue;
