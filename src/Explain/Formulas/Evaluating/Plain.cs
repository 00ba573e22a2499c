namespace Explain;

/// <summary>A formula without units, and the unit of what it gives.</summary>
internal readonly record struct Plain(Expr Number, Scale Scale);
