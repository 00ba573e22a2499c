namespace Explain;

/// <summary>Names of units in words.</summary>
internal static partial class UnitNames
{
    /// <summary>The name of one unit of length or angle.</summary>
    public static Phrase Of(Unit unit) => Table.First(t => t.Unit == unit).Name;

    private static Items<(Unit Unit, Phrase Name)> Table { get; } =
    [
        (Unit.Millimetre, Millimetre()), (Unit.Centimetre, Centimetre()), (Unit.Metre, Metre()), (Unit.Kilometre, Kilometre()), (Unit.Inch, Inch()), (Unit.Foot, Foot()),
        (Unit.Yard, Yard()), (Unit.Mile, Mile()), (Unit.Degree, Degree()), (Unit.Minute, Minute()), (Unit.Second, Second()),
    ];

    [Phrase("unit.millimetre")]
    private static partial Phrase Millimetre();

    [Phrase("unit.centimetre")]
    private static partial Phrase Centimetre();

    [Phrase("unit.metre")]
    private static partial Phrase Metre();

    [Phrase("unit.kilometre")]
    private static partial Phrase Kilometre();

    [Phrase("unit.inch")]
    private static partial Phrase Inch();

    [Phrase("unit.foot")]
    private static partial Phrase Foot();

    [Phrase("unit.yard")]
    private static partial Phrase Yard();

    [Phrase("unit.mile")]
    private static partial Phrase Mile();

    [Phrase("unit.degree")]
    private static partial Phrase Degree();

    [Phrase("unit.minute")]
    private static partial Phrase Minute();

    [Phrase("unit.second")]
    private static partial Phrase Second();
}
