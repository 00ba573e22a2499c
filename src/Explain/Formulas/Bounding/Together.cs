namespace Explain;

/// <summary>Stands for a sum of measurements while a box is searched.</summary>
internal sealed record Together(Expr Sum) : Symbol;
