using Fractions;

namespace Explain;

/// <summary>Cuts boxes in two across the side that is widest in proportion to the whole box.</summary>
internal static class Halving
{
    public static (Items<BoxSide> Lower, Items<BoxSide> Upper) Halves(Items<BoxSide> box, Items<BoxSide> whole)
    {
        int widest = 0;
        Fraction most = Fraction.Zero;
        for (int i = 0; i < box.Count; i++)
        {
            if (box[i].IsPoint || box[i].Width / whole[i].Width is var share && share <= most) continue;
            (widest, most) = (i, share);
        }

        BoxSide side = box[widest];
        return (With(box, widest, side with { High = side.Middle }), With(box, widest, side with { Low = side.Middle }));
    }

    public static Items<BoxSide> With(Items<BoxSide> box, int index, BoxSide side) => [.. box.Select((s, i) => i == index ? side : s)];
}
