namespace Explain;

/// <summary>Angles of a triangle that do not add up.</summary>
internal sealed class AnglesFault(Problem problem, Ledger ledger)
{
    private static readonly Expr Straight = Expr.Degrees(180);

    /// <summary>Two angles whose rays do not meet, or otherwise three that are not 180° together.</summary>
    public ProblemError Of(Polygon triangle, Items<Symbol> angles)
    {
        for (int i = 0; i < angles.Count; i++)
            for (int j = i + 1; j < angles.Count; j++)
                if (ledger.Compare(new Sum(angles[i], angles[j]), Straight) >= 0) return Rays(angles[i], angles[j]);
        return Together(triangle, angles);
    }

    private ProblemError Rays(Symbol one, Symbol other)
    {
        Culprits culprits = new(problem, ledger, one, other);
        (Angle first, Angle second) = (Spelled(culprits, one), Spelled(culprits, other));
        if (culprits.Givens is [var earlier, _] && earlier.Of == second) (first, second) = (second, first);
        Symbol larger = ledger.Compare(first, second) >= 0 ? first : second;
        return new(ErrorCodes.RaysDoNotMeet, Lines(culprits), 0,
            ErrorPhrases.RaysDoNotMeet(first.Vertex, second.Vertex, first, second, Number(first), Number(second), Value(new Sum(first, second))),
            culprits.Givens.Count < 2 ? ErrorPhrases.CheckTheFigure() : ErrorPhrases.OtherDirection(Number(larger), Value(new Difference(Straight, larger))));
    }

    private ProblemError Together(Polygon triangle, Items<Symbol> angles)
    {
        Culprits culprits = new(problem, ledger, angles);
        if (culprits.Givens.Count < 2) return Figure(triangle, angles, culprits);
        Given last = culprits.Givens[^1];
        Given[] others = [.. culprits.Givens.Where(g => g != last)];
        Symbol[] rest = [.. angles.Where(a => culprits.Spelled(a) != last.Of)];
        Value sum = Value(new Sum(new Sum(rest[0], rest[1]), last.Of)), should = Value(new Difference(new Difference(Straight, rest[0]), rest[1]));
        return new(ErrorCodes.Contradiction, Culprits.LinesOf([last.At]), 0,
            ErrorPhrases.ContradictionOfAngles(Culprits.Fact(last), Culprits.Named(others), triangle, Number(rest[0]), Number(rest[1]), Number(last.Of), sum),
            ErrorPhrases.RemoveOneOfThree(Culprits.Named(others), last.Of, should));
    }

    /// <summary>What the figure says gives angles that clash with one another, or with the only one that is given.</summary>
    private ProblemError Figure(Polygon triangle, Items<Symbol> angles, Culprits culprits) => new(ErrorCodes.Contradiction,
        Lines(culprits), 0,
        ErrorPhrases.ContradictionOfFigure(triangle, Number(angles[0]), Number(angles[1]), Number(angles[2]), Value(new Sum(new Sum(angles[0], angles[1]), angles[2]))),
        ErrorPhrases.CheckTheFigure());

    private Items<int> Lines(Culprits culprits) => culprits.Givens.Count > 0 ? culprits.Lines : Culprits.LinesOf(problem.Figure.Select(f => f.At));

    private static Angle Spelled(Culprits culprits, Symbol angle) => (Angle)culprits.Spelled(angle);

    private Value Value(Expr of) => ledger.Evaluate(of)!;

    private Expr Number(Expr of) => Digits.Of(Value(of));
}
