namespace Explain;

/// <summary>A quantity of the figure that fills a role.</summary>
/// <param name="Is">The quantity.</param>
public sealed record Amount(Symbol Is) : RoleValue;
