namespace Explain;

/// <summary>Whether what a remark rests on holds: comparisons in the figures, shares of an uncertainty by evaluation.</summary>
internal sealed class RemarkChecks(Items<Layout> figures, Seen seen, BoundsChecks bounding, int bits)
{
    public bool Holds(Statement onlyIf, Items<int> speaksOf) => onlyIf switch
    {
        All all => all.Of.All(s => Holds(s, speaksOf)),
        Compare compare => speaksOf.Count > 0 && speaksOf.All(i => Decide.Holds(compare, (a, b) => Sign(a, b, figures[i])) == true),
        Place { Kind: PlaceKind.RightAngle, Of: [Corner c] } => speaksOf.Count > 0 && speaksOf.All(i => figures[i].Measure(new Angle(c.First, c.Vertex, c.Second)) is { } measured && Agreement.Of(measured, Enclosure.Of(90, bits))),
        MostOf { What: SymbolUse { Symbol: var of } } most => seen.All.Where(t => t.Of == of && t.Open is not null).Any(t => bounding.Box(t.Open!) is { } box && Share.IsMost(t.Open!, box, most.With)),
        _ => false,
    };

    private int? Sign(Expr first, Expr second, Layout figure)
    {
        if (Measured(first, figure) is not { } a || Measured(second, figure) is not { } b) return null;
        return (a - b).Sign;
    }

    private Enclosure? Measured(Expr expr, Layout figure) => expr is SymbolUse use ? figure.Measure(use.Symbol) : Agreement.Number(expr, bits);
}
