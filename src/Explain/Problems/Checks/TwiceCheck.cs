namespace Explain;

/// <summary>Finds what is given or asked for twice, under one name or two.</summary>
internal static class TwiceCheck
{
    public static IEnumerable<ProblemError> Given(Problem problem)
    {
        SameRay rays = new(problem.Figure);
        Dictionary<Symbol, Given> seen = [];
        foreach (Given given in problem.Given)
        {
            Symbol own = given.Of is Angle angle ? rays.Named(angle) : given.Of;
            if (!seen.TryAdd(own, given)) yield return ProblemEntries.Error(new(ErrorCodes.GivenTwice, Message(given, seen[own]), ProblemPhrases.KeepOne()), given.At);
        }

        foreach (IGrouping<string, Extra> again in problem.Extras.Where(e => e.Key != ExtraEntry.Shares).GroupBy(e => e.Key).Where(g => g.Count() > 1))
            yield return ProblemEntries.Error(new(ErrorCodes.GivenTwice, ProblemPhrases.WordGivenTwice(again.Key), ProblemPhrases.KeepOne()), again.Last().At);
        foreach (IGrouping<Expr?, Extra> again in problem.Extras.Where(e => e.Key == ExtraEntry.Shares).GroupBy(e => e.Value).Where(g => g.Count() > 1))
            yield return ProblemEntries.Error(new(ErrorCodes.GivenTwice, ProblemPhrases.SharesTwice(again.Last().Text), ProblemPhrases.KeepOne()), again.Last().At);
    }

    public static IEnumerable<ProblemError> Found(Problem problem)
    {
        SameRay rays = new(problem.Figure);
        Dictionary<Goal, Goal> seen = [];
        foreach (Goal goal in problem.Find)
        {
            Goal own = goal with { AsTyped = "", Letter = null, At = default, Wanted = goal.Wanted is Angle angle ? rays.Named(angle) : goal.Wanted };
            if (seen.TryAdd(own, goal)) continue;
            int line = seen[own].At.Line;
            Phrase message = line > 0 ? ProblemPhrases.FoundTwiceOnLine(goal.AsTyped, line) : ProblemPhrases.FoundTwice(goal.AsTyped);
            yield return ProblemEntries.Error(new(ErrorCodes.FoundTwice, message, ProblemPhrases.FindOnce()), goal.At);
        }
    }

    private static Phrase Message(Given again, Given first)
    {
        int line = first.At.Line;
        if (line == 0) return ProblemPhrases.GivenTwiceInProgram(again.Of, again.Typed, first.Of, first.Typed);
        bool oneName = QuantityGrammar.Write(again.Of, English.UnitedKingdom) == QuantityGrammar.Write(first.Of, English.UnitedKingdom);
        return oneName
            ? ProblemPhrases.GivenTwice(again.Of, again.Typed, first.Of, first.Typed, line)
            : ProblemPhrases.GivenTwiceOtherName(again.Of, again.Typed, first.Of, first.Typed, line, Same(again.Of));
    }

    private static Phrase Same(Symbol of) => of switch
    {
        Length => ProblemPhrases.SameLength(),
        Angle => ProblemPhrases.SameAngle(),
        _ => ProblemPhrases.SameQuantity(),
    };
}
