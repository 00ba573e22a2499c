namespace Explain;

/// <summary>What a solution starts from: the premises, each with its id, and a ledger that knows them.</summary>
internal sealed class Opening
{
    public Opening(Problem problem, Topic topic, Work work)
    {
        Ledger = new(new Arrangement([], [.. problem.Figure.SelectMany(f => Mentions.Points(f.Says)).Distinct()]) { Spelled = Spellings.Of(problem) }, WorkingUnit.Of(problem), work);
        List<Premise> premises = [];
        foreach (FigureStatement statement in problem.Figure) premises.Add(Stated(statement.Says, Next(premises)));
        foreach (Given given in problem.Given) premises.Add(Measured(given, problem, Next(premises)));
        Layouts = NeedsFigure(problem) ? topic.Model.Layouts(problem, Bits) ?? [] : [];
        foreach (Place fact in FigureFacts.Of(problem, Layouts).Where(f => Ledger.ClaimOf(f) is null)) premises.Add(Shown(fact, new("f" + Number(premises.Count(p => p.Source == Source.Figure) + 1))));
        int assumed = 0;
        foreach (Phrase phrase in topic.Assumptions) premises.Add(new Premise(new("a" + Number(++assumed)), new Taken(phrase), Source.Assumed));
        Premises = [.. premises];
    }

    /// <summary>The figures that fit, where more than one triangle or a north line has to be drawn; empty where none is needed or none can be drawn.</summary>
    public Items<Layout> Layouts { get; }

    public Ledger Ledger { get; }

    public Items<Premise> Premises { get; }

    private const int Bits = 192;

    private static bool NeedsFigure(Problem problem) => problem.Given.All(g => !g.Value.Symbols().Any()) && (problem.Given.Any(g => g.Of is Bearing) || problem.Find.Any(g => g.Wanted is Bearing)
        || problem.Figure.SelectMany(f => Mentions.Points(f.Says)).Distinct().Count() > 3 || !problem.Figure.Any(f => f.Says is Place { Kind: PlaceKind.Triangle }));

    private Premise Shown(Place says, ClaimId id)
    {
        Ledger.Learn(says, id);
        if (says is { Kind: PlaceKind.Triangle, Of: [Polygon triangle] }) Ledger.Spell(Spellings.Of(triangle));
        return new(id, says, Source.Figure);
    }

    private static ClaimId Next(List<Premise> premises) => new("g" + Number(premises.Count + 1));

    private static string Number(int number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private Premise Stated(Statement says, ClaimId id)
    {
        Ledger.Learn(says, id);
        if (Meaning.Value(says) is var (of, value) && !Ledger.Knows(of)) Ledger.Learn(of, id, value);
        return new(id, says, Source.Given);
    }

    private Premise Measured(Given given, Problem problem, ClaimId id)
    {
        Expr? within = given.Within ?? (given.Of is Angle or Bearing ? problem.AnglesWithin : problem.LengthsWithin);
        if (given.Value.Symbols().Count > 0) Ledger.Express(given.Of, id, given.Value);
        else if (!Ledger.Knows(given.Of))
        {
            if (within is null) Ledger.Learn(given.Of, id, given.Value);
            else Ledger.Measure(given.Of, id, given.Value);
        }

        return new(id, Compare.Equal(given.Of, given.Value), Source.Given) { Within = within };
    }
}
