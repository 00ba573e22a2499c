namespace Explain;

/// <summary>How answers were rounded.</summary>
internal static partial class RoundingWords
{
    [Phrase("rounding.note")]
    public static partial Phrase Note(Phrase rule);

    [Phrase("rounding.lengths")]
    public static partial Phrase Lengths(Phrase rule);

    [Phrase("rounding.areas")]
    public static partial Phrase Areas(Phrase rule);

    [Phrase("rounding.angles")]
    public static partial Phrase Angles(Phrase rule);

    [Phrase("rounding.ratios")]
    public static partial Phrase Ratios(Phrase rule);

    [Phrase("rounding.figures")]
    public static partial Phrase Figures(int n);

    [Phrase("rounding.places")]
    public static partial Phrase Places(int n);

    [Phrase("rounding.whole")]
    public static partial Phrase Whole();

    [Phrase("rounding.one-place")]
    public static partial Phrase OnePlace();

    [Phrase("rounding.two-places")]
    public static partial Phrase TwoPlaces();

    [Phrase("rounding.three-places")]
    public static partial Phrase ThreePlaces();

    [Phrase("rounding.nearest")]
    public static partial Phrase Nearest(Expr step);

    [Phrase("rounding.exact")]
    public static partial Phrase Exact();

    [Phrase("rounding.no-exact-form")]
    public static partial Phrase NoExactForm();

    [Phrase("rounding.nearest-unit")]
    public static partial Phrase NearestUnit(Phrase unit);

    [Phrase("rounding.nearest-part")]
    public static partial Phrase NearestPart(Expr part, Phrase unit);

    [Phrase("rounding.outwards")]
    public static partial Phrase Outwards();
}
