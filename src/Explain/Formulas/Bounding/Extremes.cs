namespace Explain;

/// <summary>
/// The least and the greatest value of a formula while each measurement stays between its bounds. Exact where the extreme is at an exact
/// place; nothing is found by trying corners only.
/// </summary>
internal static class Extremes
{
    /// <summary>
    /// A <see cref="Bounded"/>; <see cref="OutsideDomain"/> when the formula may have no value somewhere in the box, and so no bound;
    /// or <see cref="Undecided"/>.
    /// </summary>
    /// <exception cref="ArgumentException">A symbol of the formula has no side, or units do not go together.</exception>
    public static Evaluation Of(Expr formula, Items<BoxSide> box)
    {
        Interner interner = new();
        Plain plain = new PlainForm(interner, s => Side(s, box).Unit).Of(formula);
        Search search = new(plain.Number, [.. formula.Symbols().Select(s => Side(s, box))], interner);
        if (search.Fault() is { } fault) return new OutsideDomain(fault);
        Extreme? least = Chosen(search.Least(), 1), greatest = Chosen(search.Greatest(), -1);
        return least is null || greatest is null ? new Undecided() : new Bounded(least, greatest, search.Trends(), search.Boxes);

        Extreme? Chosen(Items<Spot>? spots, int sign) => spots is null ? null : new Choosing(formula, plain.Scale.Unit, sign).Of(spots.Value);
    }

    /// <summary>1 or −1 when the formula is positive or negative for all measurements between their bounds; null when that is not so, or not seen.</summary>
    /// <exception cref="ArgumentException">A symbol of the formula has no side, or units do not go together.</exception>
    public static int? Sign(Expr formula, Items<BoxSide> box)
    {
        Expr number = new PlainForm(new Interner(), s => Side(s, box).Unit).Of(formula).Number;
        return new Covering([.. formula.Symbols().Select(s => Side(s, box))], new BoxCount()).Sign(number);
    }

    private static BoxSide Side(Symbol symbol, Items<BoxSide> box) =>
        box.FirstOrDefault(s => s.Of.Equals(symbol)) ?? throw new ArgumentException(symbol.ToString(), nameof(box));
}
