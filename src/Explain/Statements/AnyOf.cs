namespace Explain;

/// <summary>At least one of these holds: the angle is 58.7…° or 121.2…°.</summary>
/// <param name="Of">The statements.</param>
public sealed record AnyOf(Items<Statement> Of) : Statement;
