namespace Explain;

/// <summary>Every one of these holds.</summary>
/// <param name="Of">The statements.</param>
public sealed record All(Items<Statement> Of) : Statement;
