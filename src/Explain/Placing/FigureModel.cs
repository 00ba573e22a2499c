using Fractions;

namespace Explain;

/// <summary>Draws a figure of any number of triangles: a first triangle or a first side, then point after point where two loci meet.</summary>
internal sealed class FigureModel : IIndependentModel
{
    public Items<Layout>? Layouts(Problem problem, int bits)
    {
        if (problem.Given.Any(g => g.Value.Symbols().Any())) return null;
        Rays rays = new(problem);
        Known known = new(problem, rays, bits);
        bool isNorthUp = problem.Given.Any(g => g.Of is Bearing) || problem.Find.Any(g => g.Wanted is Bearing);
        foreach (Items<Layout> start in Starts(problem, rays, known, isNorthUp, bits))
        {
            PlacingOn search = new(problem, known, isNorthUp);
            if (start.Select(search.From).ToArray() is var ends && ends.Contains(null)) continue;
            PointsOnSides sides = new(problem, rays, bits);
            return Different([.. ends.SelectMany(e => e!.Value).Select(sides.AddTo).Where(l => Fitting.Holds(l, problem, bits))], isNorthUp);
        }

        return null;
    }

    /// <summary>A triangle that its own measurements fix, else the ends of a measured length.</summary>
    private static IEnumerable<Items<Layout>> Starts(Problem problem, Rays rays, Known known, bool isNorthUp, int bits)
    {
        foreach (Polygon triangle in isNorthUp ? [] : Rays.Triangles(problem).Where(t => t.Corners.Count == 3))
            if (new Completing(bits).Corners(new TriangleParameters(triangle, problem, rays)) is { } corners) yield return [.. corners.Select(c => new Layout(c))];
        foreach (Length side in problem.Given.Select(g => g.Of).OfType<Length>())
        {
            Enclosure zero = Enclosure.Of(Fraction.Zero, bits);
            Enclosure? bearing = isNorthUp ? known.Bearing(side.To, side.From) : Enclosure.Of(90, bits);
            if (bearing is not { } to) continue;
            Vector end = new Vector(Trigonometry.Sin(to), Trigonometry.Cos(to)) * known.Length(side.From, side.To)!.Value;
            yield return [new Layout([new(side.From, new(zero, zero), false), new(side.To, end, false)])];
        }
    }

    private static Items<Layout> Different(Items<Layout> all, bool isNorthUp)
    {
        Items<Layout> kept = [];
        foreach (Layout layout in all)
            if (!kept.Any(k => IsSame(k, layout, isNorthUp))) kept = kept.With(layout);
        return kept;
    }

    /// <summary>Whether two figures are one: in place, or as far as distances tell where no north fixes them.</summary>
    private static bool IsSame(Layout first, Layout second, bool isNorthUp) => isNorthUp
        ? first.Points.All(p => second.Find(p.Of) is { } at && at.X.Overlaps(p.At.X) && at.Y.Overlaps(p.At.Y))
        : first.Points.All(p => first.Points.All(q => second.Find(p.Of) is { } a && second.Find(q.Of) is { } b && (a - b).Square.Overlaps((p.At - q.At).Square)));
}
