namespace Explain;

/// <summary>Says why no triangle fits the measurements, or why they do not fix one.</summary>
internal sealed class Refusals(Problem problem, Ledger ledger)
{
    public ProblemError NoSuchTriangle(Polygon triangle)
    {
        Symbol[] sides = [.. TriangleParts.Sides(triangle).Where(ledger.Knows)], angles = [.. TriangleParts.Angles(triangle).Where(ledger.Knows)];
        if (sides.Length == 3) return Sides(sides);
        if (angles.Length == 3 && ledger.Compare(new Sum(angles[0], angles[1]), Expr.Degrees(180)) < 0) return ThirdAngle(angles);
        if (angles.Length >= 2) return Rays(angles);
        SwingingSide swinging = SwingingSide.Of(triangle, ledger)!;
        Expr least = swinging.IsAcute(ledger) ? swinging.Height : swinging.Beside;
        return Error(ErrorCodes.DoesNotReach, problem.Given, ErrorPhrases.DoesNotReach(Facts, swinging.Opposite, Known(least)), ErrorPhrases.CheckMeasurements());
    }

    public ProblemError NotEnough(Symbol wanted) => new(ErrorCodes.NotEnoughData, LinesOf(problem.Find.Select(g => g.At)), 0,
        ErrorPhrases.NotEnoughData(wanted), problem.Given.Any(g => g.Of is Length) ? ErrorPhrases.GiveMore() : ErrorPhrases.GiveALength());

    public ProblemError NotSupported(Goal goal) =>
        new(ErrorCodes.NotSupported, LinesOf([goal.At]), goal.At.Column, ErrorPhrases.NotSupported(goal.AsTyped), ErrorPhrases.SeeTopics());

    public ProblemError Contradiction(Given given, Expr derived) => Error(ErrorCodes.Contradiction, [given],
        ErrorPhrases.Contradiction(Compare.Equal(given.Of, given.Value), given.Of, derived), ErrorPhrases.RemoveOne());

    private Items<Statement> Facts => [.. problem.Given.Select(g => (Statement)Compare.Equal(g.Of, g.Value))];

    private ProblemError Sides(Symbol[] sides)
    {
        Symbol longest = sides.First(s => sides.All(o => ledger.Compare(s, o) >= 0));
        Symbol[] others = [.. sides.Where(s => s != longest)];
        Expr sum = new Sum(others[0], others[1]);
        bool flat = ledger.Compare(longest, sum) == 0;
        Expr total = Known(sum);
        return Error(flat ? ErrorCodes.FlatTriangle : ErrorCodes.NoTriangle, problem.Given,
            flat ? ErrorPhrases.FlatTriangle(Facts) : ErrorPhrases.NoTriangle(Facts, Known(longest), total), ErrorPhrases.CheckLengths());
    }

    private ProblemError ThirdAngle(Symbol[] angles)
    {
        Given last = problem.Given.Last(g => angles.Contains(g.Of));
        Symbol[] others = [.. angles.Where(a => a != last.Of)];
        return Contradiction(last, Known(new Difference(new Difference(Expr.Degrees(180), others[0]), others[1])));
    }

    private ProblemError Rays(Symbol[] angles) => Error(ErrorCodes.RaysDoNotMeet, [.. problem.Given.Where(g => g.Of is Angle)],
        ErrorPhrases.RaysDoNotMeet(angles[0], angles[1], Known(new Sum(angles[0], angles[1]))), ErrorPhrases.OtherDirection());

    /// <summary>The formula's value as digits.</summary>
    private Quantity Known(Expr expr) => Digits.Of(ledger.Evaluate(expr)!);

    private static ProblemError Error(string code, Items<Given> at, Phrase message, Phrase remedy) => new(code, LinesOf(at.Select(g => g.At)), 0, message, remedy);

    private static Items<int> LinesOf(IEnumerable<Position> places) => [.. places.Select(p => p.Line).Where(l => l > 0).Distinct().Order()];
}
