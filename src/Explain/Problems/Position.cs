namespace Explain;

/// <summary>Where something stands in a problem file; of something built in a program only the column is more than 0, and gives the order of the calls.</summary>
/// <param name="Line">The line, counted from 1; 0 when there is none.</param>
/// <param name="Column">The column, counted from 1; 0 when there is none.</param>
public readonly record struct Position(int Line, int Column);
