namespace Explain;

/// <summary>
/// One measurement alone, the others as measured, moves a quantity over more than half of the way between its bounds.
/// </summary>
/// <param name="What">The quantity.</param>
/// <param name="With">The measurement.</param>
public sealed record MostOf(Expr What, Symbol With) : Statement;
