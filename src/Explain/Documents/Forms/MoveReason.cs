namespace Explain;

/// <summary>The reason of a line of algebra.</summary>
internal static class MoveReason
{
    public static Items<Inline> Of(Move move, Speaker speaker) => speaker.Say(move switch
    {
        { Kind: MoveKind.Add, With: { } with } => MoveWords.Add(with),
        { Kind: MoveKind.Subtract, With: { } with } => MoveWords.Subtract(with),
        { Kind: MoveKind.Multiply, With: { } with } => MoveWords.Multiply(with),
        { Kind: MoveKind.Divide, With: { } with } => MoveWords.Divide(with),
        { Kind: MoveKind.Invert } => MoveWords.Invert(),
        { Kind: MoveKind.Exchange } => MoveWords.Exchange(),
        { Kind: MoveKind.Root } => MoveWords.Root(),
        { Kind: MoveKind.Square } => MoveWords.Square(),
        { Kind: MoveKind.Inverse } => MoveWords.Inverse(),
        { Kind: MoveKind.Factor } => MoveWords.Factor(),
        { Kind: MoveKind.LeaveOutUnit } => MoveWords.LeaveOutUnit(),
        _ => MoveWords.Collect(),
    });
}
