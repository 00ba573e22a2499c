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
        int assumed = 0;
        foreach (Phrase phrase in topic.Assumptions) premises.Add(new Premise(new("a" + Number(++assumed)), new Taken(phrase), Source.Assumed));
        Premises = [.. premises];
    }

    public Ledger Ledger { get; }

    public Items<Premise> Premises { get; }

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
        if (!Ledger.Knows(given.Of) && given.Value.Symbols().Count == 0)
        {
            if (within is null) Ledger.Learn(given.Of, id, given.Value);
            else Ledger.Measure(given.Of, id, given.Value);
        }

        return new(id, Compare.Equal(given.Of, given.Value), Source.Given) { Within = within };
    }
}
