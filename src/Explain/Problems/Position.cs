namespace Explain;

/// <summary>Where something stands in a problem file, or in the order of a builder's calls.</summary>
/// <param name="Line">The line, counted from 1; 0 when there is none.</param>
/// <param name="Column">The column, counted from 1; 0 when there is none.</param>
public readonly record struct Position(int Line, int Column);
