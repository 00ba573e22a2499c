using Fractions;

namespace Explain;

/// <summary>
/// Newton's method for boxes: every place in a box where all derivatives by its free measurements are 0 lies also in
/// middle − H⁻¹ × (derivatives at the middle), H being the enclosures of the second derivatives over the box. If H can be inverted, there is at most one.
/// </summary>
internal static class Newton
{
    /// <summary>The box cut down to where such a place may be; empty when there is none; null when the step cannot be made.</summary>
    public static Items<BoxSide>? Step(Landscape landscape, Items<BoxSide> box)
    {
        BoxSide[] free = [.. box.Where(s => !s.IsPoint)];
        OverBox over = new(box), middle = new(box.Select(s => s.At(s.Middle)));
        Enclosure[][] rows = new Enclosure[free.Length][];
        for (int i = 0; i < free.Length; i++)
        {
            Enclosure?[] row = [.. free.Select(s => over.Of(landscape.Second(free[i].Of, s.Of))), middle.Of(landscape.First(free[i].Of))];
            if (row.Contains(null)) return null;
            rows[i] = [.. row.Select(e => e!.Value)];
        }

        return Solve(rows) is { } steps ? Cut(box, free, steps) : null;
    }

    /// <summary>The box cut with middle − steps.</summary>
    private static Items<BoxSide> Cut(Items<BoxSide> box, BoxSide[] free, Enclosure[] steps)
    {
        List<BoxSide> sides = [];
        foreach (BoxSide side in box)
        {
            int index = Array.IndexOf(free, side);
            BoxSide? cut = index < 0 ? side : Cut(side, Enclosure.Of(side.Middle, OverBox.Bits) - steps[index]);
            if (cut is null) return [];
            sides.Add(cut);
        }

        return ItemsFactory.From(sides);
    }

    private static BoxSide? Cut(BoxSide side, Enclosure to)
    {
        (Fraction low, Fraction high) = (to.Low > side.Low ? to.Low : side.Low, to.High < side.High ? to.High : side.High);
        return low <= high ? side with { Low = low, High = high } : null;
    }

    /// <summary>Solves linear equations with enclosures, the right sides in the last column; null when a pivot may be 0.</summary>
    private static Enclosure[]? Solve(Enclosure[][] rows)
    {
        for (int pivot = 0; pivot < rows.Length; pivot++)
        {
            for (int row = 0; row < rows.Length; row++)
            {
                if (row == pivot) continue;
                if (Enclosure.Divide(rows[row][pivot], rows[pivot][pivot]) is not { } factor) return null;
                for (int column = pivot + 1; column <= rows.Length; column++) rows[row][column] -= factor * rows[pivot][column];
            }
        }

        Enclosure?[] solution = [.. rows.Select((row, i) => Enclosure.Divide(row[^1], row[i]))];
        return solution.Contains(null) ? null : [.. solution.Select(s => s!.Value)];
    }
}
