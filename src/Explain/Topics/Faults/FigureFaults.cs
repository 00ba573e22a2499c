namespace Explain;

/// <summary>Figures that a topic cannot take.</summary>
internal static class FigureFaults
{
    /// <summary>A rectangle or a parallelogram with unequal sides has no circle that touches all of them.</summary>
    public static ProblemError? NoInscribedCircle(Problem problem)
    {
        foreach (FigureStatement statement in problem.Figure)
        {
            if (statement.Says is not Place { Kind: PlaceKind.Rectangle or PlaceKind.Parallelogram, Of: [Polygon { Corners: [var a, var b, var c, var d] } shape] }) continue;
            if (Side(problem, [new(a, b), new(c, d)]) is not { } first || Side(problem, [new(b, c), new(d, a)]) is not { } second || Same(first, second)) continue;
            return ProblemEntries.Error(new(ErrorCodes.MethodDoesNotApply, ErrorPhrases.NoInscribedCircle(shape, first.Of, second.Of), ErrorPhrases.UseAShapeWithACircle()), statement.At);
        }

        return null;
    }

    /// <summary>What is wrong with the figure of a tether; null when nothing is.</summary>
    public static ProblemError? OfTether(Problem problem) => PointsInwards(problem) ?? SomewhereInside(problem);

    /// <summary>A tether inside a shape, at a point of which nothing else is said.</summary>
    private static ProblemError? SomewhereInside(Problem problem)
    {
        foreach (FigureStatement tether in problem.Figure)
        {
            if (tether.Says is not Place { Kind: PlaceKind.TetherInside, Of: [Point at, Polygon shape] } || shape.Corners.Contains(at)) continue;
            bool isPlaced = problem.Given.Any(g => Mentions.Points(g.Of).Contains(at)) || problem.Figure.Any(f => f != tether && Mentions.Points(f.Says).Contains(at));
            if (!isPlaced) return ProblemEntries.Error(new(ErrorCodes.ArrangementNotFixed, ErrorPhrases.SomewhereInside(at, shape), ErrorPhrases.SayItsPlace(at)), tether.At);
        }

        return null;
    }

    /// <summary>A tether outside a shape with a corner that points inwards.</summary>
    private static ProblemError? PointsInwards(Problem problem)
    {
        foreach (FigureStatement tether in problem.Figure)
        {
            if (tether.Says is not Place { Kind: PlaceKind.TetherOutside, Of: [_, Polygon shape] }) continue;
            Place? reflex = problem.Figure.Select(f => f.Says).OfType<Place>().FirstOrDefault(p => p.Kind == PlaceKind.ReflexPolygon && p.Of[0].Equals(shape));
            if (reflex is null) continue;
            Items<Point> inwards = [.. reflex.Of.OfType<Point>()];
            return ProblemEntries.Error(new(ErrorCodes.NotSupported, ErrorPhrases.PointsInwards(inwards, shape), ErrorPhrases.ReplaceTheShape()), tether.At);
        }

        return null;
    }

    private static Given? Side(Problem problem, Items<Length> equal) => problem.Given.FirstOrDefault(g => g.Of is Length side && equal.Contains(side) && g.Value is Quantity);

    private static bool Same(Given one, Given other) => Evaluator.Compare(one.Value, other.Value) is 0;
}
