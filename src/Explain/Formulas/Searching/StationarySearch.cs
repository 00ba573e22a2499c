using System.Numerics;
using Fractions;

namespace Explain;

/// <summary>
/// Finds the places inside a box where a formula may be least: where all derivatives by the free measurements are 0. Pieces are
/// dropped where a derivative is not 0, where a second derivative is negative, and where the formula is greater than elsewhere.
/// </summary>
internal sealed class StationarySearch(Landscape landscape, Items<BoxSide> face, BoxCount count)
{
    private const int MostBoxes = 3000;

    private static readonly Fraction Narrow = new(BigInteger.One, BigInteger.One << 128);

    private readonly List<Items<BoxSide>> found = [];

    /// <summary>Narrow boxes, at most one such place in each; null when they could not be made narrow.</summary>
    /// <param name="best">The formula is known to be no greater than this somewhere; made less where that is seen.</param>
    public List<Items<BoxSide>>? Find(ref Fraction? best)
    {
        Stack<Items<BoxSide>> open = new([face]);
        for (int examined = 0; open.TryPop(out Items<BoxSide> next); examined++)
        {
            if (examined >= MostBoxes) return null;
            count.Add();
            if (IsDropped(next, ref best)) continue;
            Items<BoxSide> cut = Newton.Step(landscape, next) ?? next;
            if (cut.Count == 0) continue;
            if (cut.Zip(next).Any(p => p.First.Width * 2 <= p.Second.Width && !p.Second.IsPoint)) open.Push(cut);
            else if (cut.All(s => s.Width < Narrow)) found.Add(cut);
            else Halve(cut, open);
        }

        return found;
    }

    private bool IsDropped(Items<BoxSide> box, ref Fraction? best)
    {
        OverBox over = new(box);
        if (over.Of(landscape.Formula) is not { } value) return false;
        if (new OverBox(box.Select(s => s.At(s.Middle))).Of(landscape.Formula) is { } middle && (best is null || middle.High < best)) best = middle.High;
        if (value.Low > best) return true;
        return box.Where(s => !s.IsPoint).Any(s => over.Of(landscape.First(s.Of))?.Sign is 1 or -1
            || over.Of(landscape.Second(s.Of, s.Of))?.Sign == -1);
    }

    private void Halve(Items<BoxSide> box, Stack<Items<BoxSide>> open)
    {
        (Items<BoxSide> lower, Items<BoxSide> upper) = Halving.Halves(box, face);
        open.Push(upper);
        open.Push(lower);
    }
}
