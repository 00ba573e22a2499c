namespace Explain;

/// <summary>A statement of the figure, with its place.</summary>
/// <param name="Says">The statement.</param>
/// <param name="At">Where it stands.</param>
public sealed record FigureStatement(Statement Says, Position At);
