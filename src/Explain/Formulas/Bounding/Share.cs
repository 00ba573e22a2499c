using Fractions;

namespace Explain;

/// <summary>What one measurement contributes to the width between the bounds of a formula.</summary>
internal static class Share
{
    private static readonly Fraction Half = new(1, 2);

    /// <summary>Whether this measurement alone makes more than half of the width.</summary>
    public static bool IsMost(Expr formula, Items<BoxSide> box, Symbol with) => OfOne(formula, box, with) is { } share && share > Half;

    /// <summary>The width with only this measurement free, the others at their middles, as a share of the whole width; null where there are no bounds.</summary>
    public static Fraction? OfOne(Expr formula, Items<BoxSide> box, Symbol with)
    {
        Items<BoxSide> alone = [.. box.Select(s => s.Of.Equals(with) ? s : s.At(s.Middle))];
        return Width(formula, alone) is { } one && Width(formula, box) is { } all && !all.IsZero ? one / all : null;
    }

    private static Fraction? Width(Expr formula, Items<BoxSide> box) => Extremes.Of(formula, box) is Bounded bounded
        ? (bounded.Greatest.Value.True - bounded.Least.Value.In(bounded.Greatest.Value.Unit).True).Middle : null;
}
