using Fractions;

namespace Explain;

/// <summary>Places the points that the figure puts on lines through points already placed.</summary>
internal sealed class PointsOnSides(Problem problem, Rays rays, int bits)
{
    public Layout AddTo(Layout layout)
    {
        foreach (Place place in Rays.Places(problem)) layout = layout.With(place) ?? layout;
        foreach (Items<Point> line in rays.Lines) layout = Along(layout, line);
        return layout;
    }

    private Layout Along(Layout layout, Items<Point> line)
    {
        int[] placed = [.. Enumerable.Range(0, line.Count).Where(i => layout.Find(line[i]) is not null)];
        if (placed.Length < 2) return layout;
        (int first, int last) = (placed[0], placed[^1]);
        Vector start = layout.Find(line[first])!.Value, whole = layout.Find(line[last])!.Value - start;
        foreach (int i in Enumerable.Range(0, line.Count).Where(i => layout.Find(line[i]) is null))
        {
            Vector? measured = Measured(line[first], line[i], start, whole, i > first);
            Vector at = measured ?? start + whole * Enclosure.Of(new Fraction(i - first, last - first), bits);
            layout = new(layout.Points.With(new(line[i], at, measured is null)));
        }

        return layout;
    }

    private Vector? Measured(Point from, Point to, Vector start, Vector whole, bool forwards)
    {
        if (problem.Given.FirstOrDefault(g => g.Of == new Length(from, to)) is not { } given) return null;
        if (GivenNumbers.Of(given.Value, bits) is not { } length || whole.Length is not { } all || Enclosure.Divide(length, all) is not { } share) return null;
        return start + whole * (forwards ? share : -share);
    }
}
