namespace Explain;

/// <summary>Left + Right.</summary>
/// <param name="Left">What stands first.</param>
/// <param name="Right">What stands second.</param>
public sealed record Sum(Expr Left, Expr Right) : Expr;
