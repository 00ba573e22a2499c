using Fractions;

namespace Explain;

/// <summary>
/// Looks whether the one place in a narrow box where the derivatives are 0 is a bound, a short decimal or the root of one, and
/// proves it: the derivatives must be 0 there.
/// </summary>
internal static class Pinning
{
    private const int Places = 9;

    /// <param name="landscape">The formula.</param>
    /// <param name="narrow">A box in which there is at most one such place.</param>
    /// <param name="face">The box from which it was cut: its sides without width are not free.</param>
    public static Items<Located>? Exactly(Landscape landscape, Items<BoxSide> narrow, Items<BoxSide> face)
    {
        Exact[] exact = [.. narrow.Zip(face, Guess).OfType<Exact>()];
        if (exact.Length < narrow.Count) return null;
        Items<Located> place = [.. narrow.Zip(exact, (s, e) => new Located(s.Of, Value.Of(e, s.Unit)))];
        return face.Where(s => !s.IsPoint).All(s => Evaluator.SignOfNumber(At(landscape.First(s.Of), place)) == 0) ? place : null;
    }

    private static Expr At(Expr formula, Items<Located> place) => place.Aggregate(formula, (all, l) => all.Replace(l.Of, new Quantity(l.At.Exact!, Unit.None)));

    private static Exact? Guess(BoxSide side, BoxSide face)
    {
        Enclosure near = Enclosure.Between(side.Low, side.High, OverBox.Bits);
        if (near.Contains(face.Low)) return Exact.Of(face.Low);
        if (near.Contains(face.High)) return Exact.Of(face.High);
        if (Decimals.CandidateIn(near, Places) is { } decimalNumber) return Exact.Of(decimalNumber);
        return near.Sign == 1 && Decimals.CandidateIn(near * near, Places) is { } square ? Exact.Root(Exact.Of(square)) : null;
    }
}
