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
        return Error("does-not-reach", problem.Given, ErrorPhrases.DoesNotReach(Facts, Opposite(sides, angles[0]), Height(sides, angles[0])), ErrorPhrases.CheckMeasurements());
    }

    public ProblemError NotEnough(Symbol wanted) => new("not-enough-data", LinesOf(problem.Find.Select(g => g.At)), 0,
        ErrorPhrases.NotEnoughData(wanted), problem.Given.Any(g => g.Of is Length) ? ErrorPhrases.GiveMore() : ErrorPhrases.GiveALength());

    public ProblemError NotSupported(Goal goal) =>
        new("not-supported", LinesOf([goal.At]), goal.At.Column, ErrorPhrases.NotSupported(goal.AsTyped), ErrorPhrases.SeeTopics());

    public ProblemError Contradiction(Given given, Expr derived) => Error("contradiction", [given],
        ErrorPhrases.Contradiction(Compare.Equal(given.Of, given.Value), given.Of, derived), ErrorPhrases.RemoveOne());

    private Items<Statement> Facts => [.. problem.Given.Select(g => (Statement)Compare.Equal(g.Of, g.Value))];

    private ProblemError Sides(Symbol[] sides)
    {
        Symbol longest = sides.First(s => sides.All(o => ledger.Compare(s, o) >= 0));
        Symbol[] others = [.. sides.Where(s => s != longest)];
        Expr sum = new Sum(others[0], others[1]);
        bool flat = ledger.Compare(longest, sum) == 0;
        Expr total = Known(sum);
        return Error(flat ? "flat-triangle" : "no-triangle", problem.Given,
            flat ? ErrorPhrases.FlatTriangle(Facts) : ErrorPhrases.NoTriangle(Facts, Known(longest), total), ErrorPhrases.CheckLengths());
    }

    private ProblemError ThirdAngle(Symbol[] angles)
    {
        Given last = problem.Given.Last(g => angles.Contains(g.Of));
        Symbol[] others = [.. angles.Where(a => a != last.Of)];
        return Contradiction(last, Known(new Difference(new Difference(Expr.Degrees(180), others[0]), others[1])));
    }

    private ProblemError Rays(Symbol[] angles) => Error("rays-do-not-meet", [.. problem.Given.Where(g => g.Of is Angle)],
        ErrorPhrases.RaysDoNotMeet(angles[0], angles[1], Known(new Sum(angles[0], angles[1]))), ErrorPhrases.OtherDirection());

    private static Symbol Opposite(Symbol[] sides, Symbol angle) =>
        sides.First(s => s is Length l && l.From != ((Angle)angle).Vertex && l.To != ((Angle)angle).Vertex);

    private Expr Height(Symbol[] sides, Symbol angle) =>
        ledger.Compare(angle, Expr.Degrees(90)) < 0 ? Known(new Product(Beside(sides, angle), new Apply(Function.Sine, angle))) : Known(Beside(sides, angle));

    private static Symbol Beside(Symbol[] sides, Symbol angle) => sides.First(s => s != Opposite(sides, angle));

    /// <summary>The formula's value as digits.</summary>
    private Quantity Known(Expr expr) => Digits.Of(ledger.Evaluate(expr)!);

    private static ProblemError Error(string code, Items<Given> at, Phrase message, Phrase remedy) => new(code, LinesOf(at.Select(g => g.At)), 0, message, remedy);

    private static Items<int> LinesOf(IEnumerable<Position> places) => [.. places.Select(p => p.Line).Where(l => l > 0).Distinct().Order()];
}
