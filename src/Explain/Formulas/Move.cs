namespace Explain;

/// <summary>One move of algebra, applied to both sides.</summary>
/// <param name="Kind">What is done.</param>
/// <param name="With">What is added, multiplied and so on; null where the move needs nothing.</param>
public sealed record Move(MoveKind Kind, Expr? With = null);
