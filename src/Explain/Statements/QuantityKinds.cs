namespace Explain;

/// <summary>Tells what kind of value quantities and units have.</summary>
internal static class QuantityKinds
{
    public static QuantityKind Of(Symbol symbol) => symbol switch
    {
        Length or DistanceToLine or CircleMeasure => QuantityKind.Length,
        Measure { Kind: MeasureKind.Area } => QuantityKind.Area,
        Measure => QuantityKind.Length,
        Angle or Bearing => QuantityKind.Angle,
        _ => QuantityKind.Number,
    };

    public static QuantityKind Of(Unit unit) =>
        unit.IsAngle ? QuantityKind.Angle : unit.Power == 1 ? QuantityKind.Length : unit.Power == 2 ? QuantityKind.Area : QuantityKind.Number;

    /// <summary>What a value of the kind is called: a length.</summary>
    public static Phrase Name(QuantityKind kind) => kind switch
    {
        QuantityKind.Length => StatementPhrases.ALength(),
        QuantityKind.Area => StatementPhrases.AnArea(),
        QuantityKind.Angle => StatementPhrases.AnAngle(),
        _ => StatementPhrases.ANumber(),
    };
}
