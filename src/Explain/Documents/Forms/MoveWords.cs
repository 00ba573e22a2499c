namespace Explain;

/// <summary>The moves of algebra.</summary>
internal static partial class MoveWords
{
    [Phrase("move.add")]
    public static partial Phrase Add(Expr with);

    [Phrase("move.subtract")]
    public static partial Phrase Subtract(Expr with);

    [Phrase("move.multiply")]
    public static partial Phrase Multiply(Expr with);

    [Phrase("move.divide")]
    public static partial Phrase Divide(Expr with);

    [Phrase("move.invert")]
    public static partial Phrase Invert();

    [Phrase("move.exchange")]
    public static partial Phrase Exchange();

    [Phrase("move.root")]
    public static partial Phrase Root();

    [Phrase("move.square")]
    public static partial Phrase Square();

    [Phrase("move.inverse")]
    public static partial Phrase Inverse();

    [Phrase("move.factor")]
    public static partial Phrase Factor();

    [Phrase("move.leave-out-unit")]
    public static partial Phrase LeaveOutUnit();

    [Phrase("move.collect")]
    public static partial Phrase Collect();
}
